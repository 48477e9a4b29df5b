/**
 * Flags for every Chromium the tests and the pictures use: no sandbox (a container's root has none), no graphics card,
 * and none of the browser's own calls home.
 */
export const browserFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
