import { fixedText, mm } from '../../shared/format.ts';
import { differenceOf, differenceText, force, small } from './lettering.ts';
import { isLost } from './magnify.ts';
import { hardestPulled, isPiece, type Posed } from './posed.ts';
import { yieldsAt } from './seat.ts';
import { layoutWords, type BedKind, type DesignName, type RockingSetting } from './settings.ts';
import type { RockingBench } from './state.svelte.ts';

const beds: Readonly<Record<BedKind, string>> = {
  pressed: 'lying on slippery bone',
  rough: 'lying on bone that grips',
  bonded: 'bonded to the bone',
};

/** The bench in words: for a screen reader, and for whoever reads the page without pictures. */
export function describe(bench: RockingBench): string {
  const { setting } = bench;
  const scene = `A ball is pressed on two sockets with ${force(setting.press)}, ${placeWords(setting)}.`;
  return [
    scene,
    ...(['a', 'b'] as const).map((name) => designWords(bench, name)),
    rockedWords(bench),
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** The first socket alone, where it is shown alone. */
export function describeOne(bench: RockingBench): string {
  const { setting } = bench;
  const scene = `A ball is pressed on a socket with ${force(setting.press)}, ${placeWords(setting)}.`;
  return `${scene} ${designWords(bench, 'a')}`;
}

/** What was set, for the foot of a picture. */
export function settingLine(setting: RockingSetting): string {
  const { press, ballDiameter, mismatch, height, width, modulus, layer } = setting;
  const designs = (['a', 'b'] as const).map((name) => {
    const { layout, kind, diameter, length, bed } = setting[name];
    const pegs = layout === 'keel' ? mm(length) : `${mm(diameter)} by ${mm(length)}`;
    const held = layout === 'none' ? 'nothing on it' : `${layoutWords[layout]}, ${pegs}, ${kind}`;
    return `${name.toUpperCase()}: ${held}, ${beds[bed]}`;
  });
  return [
    `${force(press)}, ${placeWords(setting)}`,
    ...designs,
    `bone ${modulus} MPa, ${mm(layer)} thick${yieldWords(setting)}`,
    `back ${mm(height)} by ${mm(width)}`,
    `ball ${mm(ballDiameter)}, diametral mismatch ${mm(mismatch)}`,
  ].join('; ');
}

/** ", yields at 8.4 MPa", or nothing. */
function yieldWords(setting: RockingSetting): string {
  const strength = yieldsAt(setting);
  return strength === undefined ? '' : `, yields at ${fixedText(strength, 1)}\u00a0MPa`;
}

export function placeWords({ plane, place }: RockingSetting): string {
  if (place === 0) return 'in the middle';
  const [minus, plus] = plane === 'top-bottom' ? ['bottom', 'top'] : ['back', 'front'];
  return `${Math.abs(place)} % of the way to the ${place > 0 ? plus : minus} rim`;
}

function designWords(bench: RockingBench, name: DesignName): string {
  const { setting, shown, theory, readings, remembers } = bench;
  const posed = shown[name];
  const { layout, kind, bed } = setting[name];
  const held = layout === 'none' ? 'held by nothing' : `held by ${layoutWords[layout]}, ${kind}`;
  const lead = `${name.toUpperCase()}, ${held}, ${beds[bed]},`;
  if (posed.state === 'overturned') return `${lead} has overturned: nothing balances this load.`;
  if (posed.state === 'sliding') return `${lead} has slid off: nothing holds it along the bone.`;
  const far =
    bed === 'bonded' ? 'the bone at the far rim is stretched by' : 'the far rim has lifted';
  const moved = `${lead} ${posed.liftOff < 5e-4 ? 'has not lifted' : `moves: ${far} ${small(posed.liftOff)}`} and the near side is pressed in ${small(posed.pressIn)}.`;
  const difference = differenceOf(posed.liftOff, theory[name].liftOff);
  const beside =
    readings === null || remembers || posed.state !== 'at rest' || isLost(theory[name].state)
      ? ''
      : ` The solver has ${small(theory[name].liftOff)}, ${differenceText(difference)}.`;
  return `${moved}${pullWords(posed)}${beside}`;
}

function pullWords(posed: Posed): string {
  const hold = hardestPulled(posed);
  if (hold === null || hold.pull < 0.5) return '';
  const what = isPiece(posed) ? 'that eighth of the keel' : 'it';
  if (hold.isSlipping) return ` At ${force(hold.strength)} ${what} slips out.`;
  return ` The hardest pull is ${force(hold.pull)}; at ${force(hold.strength)} ${what} would slip.`;
}

function rockedWords({ rims, rocked }: RockingBench): string {
  if (rocked === null || rims.a.length + rims.b.length === 0) return '';
  return (['a', 'b'] as const)
    .map((name) => {
      const [first, last] = [rims[name][0], rims[name].at(-1)];
      if (first === undefined || last === undefined) return '';
      return `${name.toUpperCase()}, rocked ${Math.ceil(last.load / 2)} times: gap ${small(first.liftOff)} at the first load, ${small(last.liftOff)} at the last.`;
    })
    .filter((part) => part !== '')
    .join(' ');
}
