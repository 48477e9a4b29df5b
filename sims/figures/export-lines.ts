/** Width of a piece of lettering in CSS pixels, at a size in px and a font weight. */
export type MeasureText = (text: string, size: number, weight: number) => number;

/** A generous guess at the width of the drawing letter, for where nothing can be measured. */
export const guessedWidth: MeasureText = (text, size) => text.length * size * 0.5;

/**
 * Breaks a text into lines no wider than `room` at its spaces; a single word too wide for a line stands alone.
 *
 * @param widthOf width of a piece of text in the unit of `room`
 * @returns at least one line
 */
export function breakLines(
  text: string,
  room: number,
  widthOf: (text: string) => number,
): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && widthOf(longer) > room) {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  return [...lines, line];
}
