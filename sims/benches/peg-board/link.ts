import * as v from 'valibot';
import type { HoldKind } from '../../mechanics/index.ts';
import type { Range } from '../../shared/range.ts';
import {
  choiceField,
  numberField,
  readUrlState,
  writeUrlState,
  type ReadState,
  type UrlField,
  type UrlFields,
} from '../../shared/url-state.ts';
import {
  defaultBoard,
  groundRanges,
  keelKinds,
  keelRanges,
  loadRanges,
  MOST_PEGS,
  pegKinds,
  pegRanges,
  type BallLoad,
  type BoardSetting,
  type Ground,
  type GroundField,
  type KeelField,
  type KeelPlace,
  type PegField,
  type PegPlace,
} from './settings.ts';

/** A letter for each kind of hold. */
const letters: Readonly<Record<HoldKind, string>> = {
  'smooth cemented': 's',
  'textured cemented': 't',
  'fluted press-fit': 'f',
  'in-grown': 'g',
  'metal-backed screw-fixed': 'm',
  'keel cemented': 'k',
};
const NOTHING = 'none';
const LONGEST = 400;
const pegNumbers: readonly PegField[] = ['x', 'y', 'diameter', 'length'];
const keelNumbers: readonly KeelField[] = ['x', 'y', 'span', 'depth', 'thickness'];

/** "s_6_-7_5_10": a letter for the kind, then the numbers in mm; null for anything else. */
function readParts<Name extends string>(
  text: string,
  kinds: readonly HoldKind[],
  names: readonly Name[],
  ranges: Readonly<Record<Name, Range>>,
): ({ kind: HoldKind } & Record<Name, number>) | null {
  const [letter, ...numbers] = text.split('_');
  const kind = kinds.find((each) => letters[each] === letter);
  if (kind === undefined || numbers.length !== names.length) return null;
  const values = names.map((name, i) => {
    const written = numbers[i] ?? '';
    const { min, max } = ranges[name];
    const value = /^-?\d{1,3}(?:\.\d{1,2})?$/.test(written) ? Number(written) : NaN;
    return value >= min && value <= max ? ([name, value === 0 ? 0 : value] as const) : null;
  });
  if (values.includes(null)) return null;
  return { kind, ...Object.fromEntries(values.filter((each) => each !== null)) } as {
    kind: HoldKind;
  } & Record<Name, number>;
}

function writeParts<Name extends string>(
  thing: { readonly kind: HoldKind } & Readonly<Record<Name, number>>,
  names: readonly Name[],
): string {
  return [letters[thing.kind], ...names.map((name) => String(Number(thing[name].toFixed(2))))].join(
    '_',
  );
}

export function readPegs(text: string): readonly PegPlace[] | null {
  if (text === NOTHING) return [];
  const pegs = text.split('*').map((each) => readParts(each, pegKinds, pegNumbers, pegRanges));
  if (pegs.length > MOST_PEGS) return null;
  const known = pegs.filter((each) => each !== null);
  return known.length === pegs.length ? known : null;
}

export const writePegs = (pegs: readonly PegPlace[]): string =>
  pegs.length === 0 ? NOTHING : pegs.map((each) => writeParts(each, pegNumbers)).join('*');

/** A text that a reader takes or, with null, does not. */
function textSchema<Value>(
  read: (text: string) => { value: Value } | null,
): v.GenericSchema<string, Value> {
  return v.pipe(
    v.string(),
    v.maxLength(LONGEST),
    v.rawTransform(({ dataset, addIssue, NEVER }) => {
      const answer = read(dataset.value);
      if (answer !== null) return answer.value;
      addIssue({ message: 'not understood' });
      return NEVER;
    }),
  );
}

const pegsField: UrlField<readonly PegPlace[]> = {
  key: 'pegs',
  name: 'pegs',
  fallback: defaultBoard.design.pegs,
  allowed: `none, or up to ${MOST_PEGS} as kind_forward_up_diameter_length in mm, parted by *`,
  schema: textSchema((text) => {
    const value = readPegs(text);
    return value === null ? null : { value };
  }),
  write: writePegs,
};

const keelField: UrlField<KeelPlace | null> = {
  key: 'keel',
  name: 'keel',
  fallback: defaultBoard.design.keel,
  allowed: 'none, or kind_forward_up_length_depth_thickness in mm',
  schema: textSchema((text) => {
    if (text === NOTHING) return { value: null };
    const value = readParts(text, keelKinds, keelNumbers, keelRanges);
    return value === null ? null : { value };
  }),
  write: (keel) => (keel === null ? NOTHING : writeParts(keel, keelNumbers)),
};

interface FlatSetting extends Ground, BallLoad {
  readonly pegs: readonly PegPlace[];
  readonly keel: KeelPlace | null;
}

const groundNumber = (key: string, name: string, of: GroundField) =>
  numberField(key, name, groundRanges[of], defaultBoard.ground[of]);
const load = (key: string, name: string, of: keyof BallLoad) =>
  numberField(key, name, loadRanges[of], defaultBoard.load[of]);

const fields: UrlFields<FlatSetting> = {
  pegs: pegsField,
  keel: keelField,
  height: groundNumber('height', 'height of the back', 'height'),
  width: groundNumber('width', 'width of the back', 'width'),
  back: choiceField('back', 'shape of the back', ['flat', 'round'], defaultBoard.ground.back),
  backRadius: groundNumber('radius', 'radius of the back', 'backRadius'),
  modulus: groundNumber('bone', 'modulus of the bone', 'modulus'),
  layer: groundNumber('layer', 'bone that gives', 'layer'),
  bed: choiceField(
    'bed',
    'bone under the back',
    ['pressed', 'rough', 'bonded'],
    defaultBoard.ground.bed,
  ),
  press: load('press', 'press', 'press'),
  shear: load('shear', 'shear', 'shear'),
  bearing: load('direction', 'direction', 'bearing'),
  share: load('share', 'way to the rim', 'share'),
};

/** Reads the bench’s whole setting from a link. */
export function readBoardLink(query: string): ReadState<BoardSetting> {
  const { state, problem } = readUrlState(fields, query);
  const { pegs, keel, press, shear, bearing, share, ...ground } = state;
  return {
    state: {
      design: { pegs, keel },
      ground,
      load: { press, shear, bearing: Math.round(bearing), share },
    },
    problem,
  };
}

export function writeBoardLink({ design, ground: of, load: by }: BoardSetting): string {
  return writeUrlState(fields, { ...design, ...of, ...by });
}
