/**
 * Where a lecture stands and how it moves on. The stage and the speaker's window both run on this, so neither can
 * disagree with the other about what the next press does.
 */

/** A place in a deck: a step, and how many of its builds are on show. Both count from 0. */
export interface Place {
  readonly step: number;
  readonly build: number;
}

/** A lecture under way. */
export interface Show extends Place {
  /** The screen is dark. */
  readonly isDark: boolean;
  /** When the presenter first went forward, ms since 1970; null before that. */
  readonly startedAt: number | null;
}

/** What a presenter can do. `restart-clock` starts the elapsed time again from now. */
export type Deed = 'forward' | 'back' | 'first' | 'last' | 'dark' | 'restart-clock';

/** Number of builds of each step of a deck, in order. */
export type Builds = readonly number[];

/** A lecture about to begin. */
export const opening: Show = { step: 0, build: 0, isDark: false, startedAt: null };

/**
 * The show after one deed.
 *
 * In the dark, a move only brings the light back: the room never misses a step it could not see.
 *
 * @param builds at least one step
 * @param now ms since 1970, kept as the start where this is the first move forward
 */
export function after(show: Show, deed: Deed, builds: Builds, now: number): Show {
  if (deed === 'restart-clock') return { ...show, startedAt: now };
  if (deed === 'dark') return { ...show, isDark: !show.isDark };
  if (show.isDark) return { ...show, isDark: false };
  const place = moved(show, deed, builds);
  const isFirstMove = show.startedAt === null && deed === 'forward';
  return { ...show, ...place, startedAt: isFirstMove ? now : show.startedAt };
}

/** The place one deed away; the same place at either end of the deck. */
function moved(place: Place, deed: 'forward' | 'back' | 'first' | 'last', builds: Builds): Place {
  const { step, build } = place;
  const last = builds.length - 1;
  if (deed === 'first') return { step: 0, build: 0 };
  if (deed === 'last') return { step: last, build: buildsOf(builds, last) };
  if (deed === 'forward') {
    if (build < buildsOf(builds, step)) return { step, build: build + 1 };
    return step < last ? { step: step + 1, build: 0 } : { step, build };
  }
  if (build > 0) return { step, build: build - 1 };
  return step > 0 ? { step: step - 1, build: buildsOf(builds, step - 1) } : { step, build };
}

/** The place itself where the deck has it, else the nearest place that it has. */
export function within(place: Place, builds: Builds): Place {
  const step = Math.max(0, Math.min(builds.length - 1, place.step));
  return { step, build: Math.max(0, Math.min(buildsOf(builds, step), place.build)) };
}

function buildsOf(builds: Builds, step: number): number {
  return builds[step] ?? 0;
}
