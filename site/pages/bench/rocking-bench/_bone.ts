import { factValue } from '../../../../lessons/fact-value.ts';

const across = factValue('socket-bone-modulus-across');
const along = factValue('socket-bone-modulus-along');
const between = factValue('socket-bone-coupling-across');
const inSurface = factValue('socket-bone-coupling-along');

/**
 * By what share bone gives more than its elastic constant across the surface says, once its sides are free: the constant
 * is that of bone held at its sides. From all four constants, bone alike in every direction along the surface.
 */
export const softerWithSidesFree = (2 * between ** 2) / (along + inSurface) / across;
