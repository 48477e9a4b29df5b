/**
 * Sheets of the drawings on the stage: four drawing units are one hundredth of the height of the screen where the drawing
 * is as large as its place on a 16:9 screen, so lettering of 24 is the 6 % a key word needs.
 */
export const underTitle = { width: 660, height: 290 } as const;
export const besideWords = { width: 386, height: 334 } as const;

/** Lettering of key words, and the smallest of all. */
export const KEY_WORD = 26;
export const LETTERING = 24;
