import { small } from './lettering.ts';
import { isLost } from './magnify.ts';
import type { Posed } from './posed.ts';
import { defaultSetting, designNames, type Design, type RockingSetting } from './settings.ts';
import type { Both } from './state.svelte.ts';

/** What the simulation comes to for a design. Lengths mm. */
export interface Measured {
  readonly state: Posed['state'];
  /** At the far rim, for each load of a rocking; of a press, the one */
  readonly gaps: readonly number[];
  readonly pressIn: number;
}

/** One setting of a demonstration: what it is called, what it changes at the beginning, and what came of it. */
export interface RockingAct {
  readonly text: string;
  readonly change: Partial<RockingSetting>;
  /** Rocked from rim to rim; else pressed once. */
  readonly rocks: boolean;
  readonly measured: Both<Measured>;
}

/** A socket with nothing on its back, on bone that grips while it is pressed. */
export const bare: Design = { ...defaultSetting.a, layout: 'none', bed: 'rough' };

/** Where every act begins: two bare sockets, the ball in the middle. */
export const beginning: RockingSetting = { ...defaultSetting, place: 0, a: bare, b: bare };

export const settingOf = ({ change }: Pick<RockingAct, 'change'>): RockingSetting => ({
  ...beginning,
  ...change,
});

/** Heads of the numbers of an act that shows one socket. */
export const ONE_COLUMNS = ['gap', 'press-in'] as const;

/** The numbers of one socket, as they are written. */
export function oneCells({ state, gaps, pressIn }: Measured): readonly string[] {
  if (isLost(state)) return [lostWord(state), '–'];
  return [small(gaps.at(-1) ?? 0), small(pressIn)];
}

/** The gap of each of the two sockets after the last load, as it is written. */
export function pairCells(measured: Both<Measured>): readonly string[] {
  return designNames.map((name) => {
    const { state, gaps } = measured[name];
    return isLost(state) ? lostWord(state) : small(gaps.at(-1) ?? 0);
  });
}

/** How a socket is lost, in a word for the stage. */
const lostWord = (state: Posed['state']): string => (state === 'sliding' ? 'slides' : 'tips');
