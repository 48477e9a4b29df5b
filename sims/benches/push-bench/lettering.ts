/** Short lettering for the drawing: a number and its unit, held together. */
export const millimetres = (value: number): string => `${value.toFixed(1)} mm`;
export const newtons = (value: number): string => `${Math.round(value)} N`;
