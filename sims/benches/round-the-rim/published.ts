/** A stability ratio measured on shoulders, as it is laid over the computed ones. Whoever shows the bench hands them in. */
export interface PublishedRatio {
  /** rad from anterior toward superior. */
  readonly direction: number;
  readonly value: number;
  /** Standard deviation, or undefined where none was given. */
  readonly sd?: number | undefined;
  /** What was measured, in a few words. */
  readonly label: string;
  /** Short reference, and how it was read: "Author 2009, read as an abstract". */
  readonly source: string;
  /** Measured after a part of the rim had been taken: shown with a defect, the others without. */
  readonly isWorn?: boolean | undefined;
}

/** A published ratio with its letter, and how far beside its direction it stands: −1, 0, 1 … places. */
export interface MarkedRatio extends PublishedRatio {
  readonly letter: string;
  readonly beside: number;
}

const NEAR = Math.PI / 60;

/** Where marks stand that would lie on the ray: beside it, first on the side away from its number. */
const OFF_RAY = [-0.8, -1.6, 0.8, -2.4, 1.6] as const;

/**
 * The ratios that belong beside a face, lettered in order; those of one direction side by side, and none on the ray.
 *
 * @param chosen direction of the ray, rad
 */
export function markedRatios(
  published: readonly PublishedRatio[],
  hasDefect: boolean,
  chosen: number,
): readonly MarkedRatio[] {
  const shown = published.filter(({ isWorn = false }) => isWorn === hasDefect);
  return shown.map((entry, i) => {
    const together = shown.filter(({ direction }) => isNear(direction, entry.direction));
    const place = together.indexOf(entry);
    const centred = place - (together.length - 1) / 2;
    return {
      ...entry,
      letter: String.fromCharCode('a'.charCodeAt(0) + i),
      beside: isNear(entry.direction, chosen) ? (OFF_RAY[place] ?? centred) : centred,
    };
  });
}

/** Each source once, with the letters of its ratios: "b, d Author 2022, …". */
export function letteredSources(marks: readonly MarkedRatio[]): readonly string[] {
  return [...new Set(marks.map(({ source }) => source))].map((source) => {
    const own = marks.filter((mark) => mark.source === source);
    return `${own.map(({ letter }) => letter).join(', ')} ${source}`;
  });
}

/** Whether two directions are drawn as one. */
export function isNear(a: number, b: number): boolean {
  return Math.abs(Math.atan2(Math.sin(a - b), Math.cos(a - b))) < NEAR;
}
