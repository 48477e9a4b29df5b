import { posedBySim, type Posed } from './posed.ts';
import { runToEnd, startScene } from './run.ts';
import { seatOf, type Seat } from './seat.ts';
import type { RockingSetting } from './settings.ts';
import { plainSetting, type HoldName, type PressName } from './simple-words.ts';

/** What the plain bench comes to for a choice: where the socket rests, and the lifts of its far edge, mm. */
export interface PlainRest {
  readonly setting: RockingSetting;
  readonly seat: Seat;
  readonly posed: Posed;
  readonly lifts: readonly number[];
}

/** The simulation of a choice, run to its end. */
export function plainRest(hold: HoldName, press: PressName): PlainRest {
  const setting = plainSetting(hold, press);
  const seat = seatOf(setting, setting.a);
  const scene = startScene(setting, seat);
  if (press === 'again') scene.rock(setting.cycles, setting.place / 100);
  const reading = runToEnd(scene, setting.cycles);
  const lifts = press === 'again' ? reading.rims.map((rim) => rim.liftOff) : [reading.liftOff];
  return { setting, seat, posed: posedBySim(reading, seat), lifts };
}
