import { besideThePage } from '../../shared/beside.ts';
import type { Solver } from '../../shared/late-answer.svelte.ts';
import { roseInPieces, type RoseQuestion, type RoseRow } from './rose.ts';

/** Works roses out beside the page. */
export function roseSolver(): Solver<RoseQuestion, readonly RoseRow[]> {
  return besideThePage(
    () => new Worker(new URL('./rose-thread.ts', import.meta.url), { type: 'module' }),
    roseInPieces,
  );
}
