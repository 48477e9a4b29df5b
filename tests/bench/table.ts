/** A plain table: a heading, a row of column names, rows of cells; numbers to the right, words to the left. */
export function table(
  heading: string,
  columns: readonly string[],
  rows: readonly (readonly (string | number)[])[],
): string {
  const cells = [columns, ...rows].map((row) => row.map(String));
  const widths = columns.map((_, i) => Math.max(...cells.map((row) => row[i]?.length ?? 0)));
  const isNumber = columns.map((_, i) => rows.every((row) => typeof row[i] === 'number'));
  const lines = cells.map((row) =>
    row
      .map((cell, i) => (isNumber[i] ? cell.padStart(widths[i] ?? 0) : cell.padEnd(widths[i] ?? 0)))
      .join('  ')
      .trimEnd(),
  );
  const rule = widths.map((width) => '─'.repeat(width)).join('  ');
  return ['', heading, '', lines[0], rule, ...lines.slice(1), ''].join('\n');
}

/** A number to so many digits behind the point, still a number. */
export function rounded(value: number, digits = 0): number {
  return Number(value.toFixed(digits));
}

/** The middle one of some numbers. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? NaN) + upper) / 2;
}
