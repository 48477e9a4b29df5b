import { measureSlip } from '../../physics/measure-slip.ts';
import { cupFrom } from '../shared/cup-setting.ts';
import { defaultSetting, type PushSetting } from './settings.ts';

/** One push of a demonstration: what it is called, what it is set to, and the ratio at which the simulation slips. */
export interface Act {
  readonly text: string;
  readonly change: Partial<PushSetting>;
  /** Side force ÷ press at the slip; null where no side force moves the ball out. */
  readonly measured: number | null;
}

/** An act with its slip measured. `change` is what it sets differently from the usual setting. */
export function measuredAct(text: string, change: Partial<PushSetting>): Act {
  const setting = { ...defaultSetting, ...change };
  const { socket, ballRadius } = cupFrom(setting);
  const { compressiveLoad, friction } = setting;
  const measured = measureSlip({ socket, ballRadius, compressiveLoad, friction });
  return { text, change, measured };
}
