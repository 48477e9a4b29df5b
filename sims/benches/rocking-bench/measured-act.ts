import type { Measured, RockingAct } from './acts.ts';
import { settingOf } from './acts.ts';
import { runToEnd, startScene } from './run.ts';
import { seatOf } from './seat.ts';
import type { Design, RockingSetting } from './settings.ts';

/** An act with what the simulation comes to. `change` is what it sets differently from the beginning. */
export function measuredAct(text: string, change: RockingAct['change'], rocks = false): RockingAct {
  const setting = settingOf({ change });
  const a = measure(setting, setting.a, rocks);
  const isAlike = JSON.stringify(setting.a) === JSON.stringify(setting.b);
  return {
    text,
    change,
    rocks,
    measured: { a, b: isAlike ? a : measure(setting, setting.b, rocks) },
  };
}

function measure(setting: RockingSetting, design: Design, rocks: boolean): Measured {
  const { cycles, place } = setting;
  const scene = startScene(setting, seatOf(setting, design));
  if (rocks) scene.rock(cycles, place / 100);
  const { state, liftOff, pressIn, rims } = runToEnd(scene, cycles);
  return { state, gaps: rocks ? rims.map((rim) => rim.liftOff) : [liftOff], pressIn };
}
