/**
 * Runs in the head, before the first paint, so that a chosen theme never flashes. It stays this small because the
 * content security policy admits it by its hash.
 */
export const themeScript = `try{const t=localStorage.getItem('held-in-the-cup.theme');if(t==='paper'||t==='night')document.documentElement.dataset.theme=t}catch{}`;
