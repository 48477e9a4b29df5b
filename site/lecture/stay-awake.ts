/** Asks the screen not to sleep while the page is on show. A browser that cannot, or a battery that will not, is no matter. */
export function stayAwake(): void {
  if (!('wakeLock' in navigator)) return;
  const ask = (): void => {
    if (document.visibilityState !== 'visible') return;
    navigator.wakeLock.request('screen').catch(() => undefined);
  };
  document.addEventListener('visibilitychange', ask);
  ask();
}
