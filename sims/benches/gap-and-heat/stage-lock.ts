/** Of the sketch in StageLock, drawing units: its box, where plastic ends and bone begins, and how deep a groove is. */
export const lock = { width: 386, height: 254, plastic: 142, bone: 236, deep: 34 } as const;
/** Where each groove begins, and how long it is. */
export const grooves = [46, 130] as const;
export const GROOVE = 40;
