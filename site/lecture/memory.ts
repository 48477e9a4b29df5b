import { readShow } from './link.ts';
import type { Show } from './show.ts';

const keyOf = (deck: string): string => `held-in-the-cup.lecture.1.${deck}`;

/** Keeps the show for this window until it is closed; without storage, the address alone keeps the place. */
export function remember(deck: string, show: Show): void {
  try {
    sessionStorage.setItem(keyOf(deck), JSON.stringify(show));
  } catch {
    // Storage is off or full.
  }
}

/** The show this window was at; null where it was at none, or what is stored cannot be read. */
export function recall(deck: string): Show | null {
  try {
    return readShow(JSON.parse(sessionStorage.getItem(keyOf(deck)) ?? 'null'));
  } catch {
    return null;
  }
}
