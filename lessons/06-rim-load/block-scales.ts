/** Of the drawings of blocks: units a millimetre, and how thick a block is drawn, mm. */
export const BLOCK = { scale: 6.4, thick: 5 } as const;
/** Units a newton. */
export const FORCE_SCALE = 0.2;
/** Units a megapascal. */
export const PRESSURE_SCALE = 24;
/** How many times as large movements are drawn. */
export const TIMES = 50;
/** The same for the back that bends, which moves less. */
export const BEND_TIMES = 100;
