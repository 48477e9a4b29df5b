/** A finger has to travel this far, px, and mostly sideways, to count as a swipe. */
const SWIPE_LENGTH = 60;

/** Where a finger does something of its own. */
const OWN_GESTURES = 'input,button,select,textarea,a[href],.bench-on-stage';

/** Calls `move` when one finger is drawn across the page: leftward goes forward. */
export function listenToSwipes(move: (deed: 'forward' | 'back') => void): void {
  let start: { x: number; y: number } | null = null;
  window.addEventListener(
    'touchstart',
    ({ touches, target }) => {
      const [finger] = touches;
      const isOurs = !(target instanceof Element && target.closest(OWN_GESTURES) !== null);
      start =
        finger !== undefined && touches.length === 1 && isOurs
          ? { x: finger.clientX, y: finger.clientY }
          : null;
    },
    { passive: true },
  );
  window.addEventListener('touchend', ({ changedTouches }) => {
    const [finger] = changedTouches;
    if (start === null || finger === undefined) return;
    const across = finger.clientX - start.x;
    const down = finger.clientY - start.y;
    start = null;
    if (Math.abs(across) < SWIPE_LENGTH || Math.abs(across) < 2 * Math.abs(down)) return;
    move(across < 0 ? 'forward' : 'back');
  });
}
