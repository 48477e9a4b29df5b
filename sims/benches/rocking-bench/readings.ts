import { differenceOf, differenceText, force, small } from './lettering.ts';
import { isLost } from './magnify.ts';
import { hardestPulled, isPiece, stateWord, type Posed } from './posed.ts';
import type { DesignName } from './settings.ts';
import type { RockingBench } from './state.svelte.ts';

/** One number of the strip of readings. */
export interface BenchReading {
  readonly name: string;
  readonly value: string;
  readonly note: string;
  readonly tone: 'force' | 'motion';
}

/** The strip of readings: for each design what the simulation measures, and beside it what the solver has. */
export function readingsOf(bench: RockingBench): readonly BenchReading[] {
  return [...designReadings(bench, 'a'), ...designReadings(bench, 'b')];
}

function designReadings(bench: RockingBench, name: DesignName): readonly BenchReading[] {
  const { shown, theory, readings, remembers } = bench;
  const [posed, expected] = [shown[name], theory[name]];
  const says = name.toUpperCase();
  const compared = (of: 'liftOff' | 'pressIn'): string => {
    if (isLost(expected.state)) return `solver: ${stateWord(expected)}`;
    if (readings === null) return 'by the solver';
    if (posed.state === 'moving') return 'under way';
    const fresh = bench.setting.yields ? 'new socket' : 'never slipped';
    if (remembers) return `solver, ${fresh}: ${small(expected[of])}`;
    return `solver ${small(expected[of])}, ${differenceText(differenceOf(posed[of], expected[of]))}`;
  };
  const value = (of: 'liftOff' | 'pressIn'): string =>
    isLost(posed.state) ? hyphenated(stateWord(posed)) : small(posed[of]);
  const far = bench.setting[name].bed === 'bonded' ? 'stretch' : 'gap';
  return [
    { name: `${says}, ${far}`, value: value('liftOff'), note: compared('liftOff'), tone: 'motion' },
    {
      name: `${says}, press-in`,
      value: value('pressIn'),
      note: compared('pressIn'),
      tone: 'motion',
    },
    { name: `${says}, hardest pull`, ...pullReading(posed), tone: 'force' },
  ];
}

/** A long word that may break in a narrow cell. */
const hyphenated = (word: string): string => word.replace('overturned', 'over\u00adturned');

function pullReading(posed: Posed): { readonly value: string; readonly note: string } {
  const hold = hardestPulled(posed);
  if (hold === null) return { value: '–', note: 'nothing to pull at' };
  if (isLost(posed.state)) return { value: '–', note: 'let go' };
  const at = `${isPiece(posed) ? 'this eighth ' : ''}slips at ${force(hold.strength)}`;
  if (hold.pull < 0.5) return { value: 'none', note: at };
  return { value: force(hold.pull), note: hold.isSlipping ? 'slipping' : at };
}
