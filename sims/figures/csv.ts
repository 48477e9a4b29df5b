/** A table as it goes into a file: every header cell names its unit. */
export interface Table {
  readonly header: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}

const LINE_END = '\r\n';

/**
 * A table as comma-separated values after RFC 4180: CRLF after every record, cells quoted where they must be.
 *
 * @throws RangeError where a row is not as long as the header, or a number is NaN
 */
export function csvText({ header, rows }: Table): string {
  return [header, ...rows].map((cells, i) => record(cells, header.length, i)).join('');
}

function record(cells: readonly (string | number)[], length: number, line: number): string {
  if (cells.length !== length) {
    throw new RangeError(
      `row ${line} has ${cells.length} cells; allowed: ${length}, as the header`,
    );
  }
  return cells.map((cell) => quoted(cellText(cell))).join(',') + LINE_END;
}

function cellText(cell: string | number): string {
  if (typeof cell === 'string') return cell;
  if (Number.isNaN(cell)) throw new RangeError('a cell is NaN; allowed: numbers and text');
  return String(cell === 0 ? 0 : cell);
}

function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
