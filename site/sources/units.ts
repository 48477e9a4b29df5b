const NO_BREAK_SPACE = '\u00a0';

/** Units that are a word before the number, or none. */
const before: Readonly<Record<string, string>> = {
  ratio: '',
  'odds ratio': 'odds ratio',
  grade: 'grade',
};

/** A written number with its unit, where a reader expects it: "24 mm", "7.1°", "grade 8.8", "0.32". */
export function withUnit(number: string, unit: string): string {
  const word = before[unit];
  if (word === '') return number;
  if (word !== undefined) return `${word}${NO_BREAK_SPACE}${number}`;
  return unit === '°' ? `${number}°` : `${number}${NO_BREAK_SPACE}${unit}`;
}
