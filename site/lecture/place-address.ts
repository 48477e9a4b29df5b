import type { Place } from './show.ts';

/** The part of an address that names a place, counted from 1: `#4` is the fourth step, `#4.2` the same after two builds. */
export function toHash({ step, build }: Place): string {
  return build === 0 ? `#${step + 1}` : `#${step + 1}.${build}`;
}

/** The place a hash names; null where it names none. It may lie beyond the deck's end. */
export function fromHash(hash: string): Place | null {
  const match = /^#([1-9]\d{0,3})(?:\.(\d{1,3}))?$/.exec(hash);
  if (match === null) return null;
  return { step: Number(match[1]) - 1, build: Number(match[2] ?? 0) };
}
