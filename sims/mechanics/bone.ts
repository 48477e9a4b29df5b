/** How a number came to be known here. */
export type BoneNumberRead = 'abstract' | 'from memory' | 'common practice' | 'teaching value';

/** A number with where it comes from. */
export interface BoneNumber {
  readonly value: number;
  /** Standard deviation, where one was given */
  readonly sd?: number;
  /** Id in the course's list of sources; none where there is no source */
  readonly source?: string;
  readonly howRead: BoneNumberRead;
}

/** Bone of the socket, or a foam that stands for bone in tests. */
export interface BoneEntry {
  readonly what: string;
  /** g/cm³ */
  readonly density?: BoneNumber;
  /** Young’s modulus in compression, MPa */
  readonly modulus: BoneNumber;
  /** Press at which it yields, MPa */
  readonly strength: BoneNumber;
}

/** A bone as the builders of a seat take it. */
export interface Bone {
  /** MPa */
  readonly modulus: number;
  readonly poisson: number;
  /** MPa */
  readonly strength: number;
}

export type BoneName =
  | 'bone, across the face'
  | 'bone, along the face'
  | 'foam grade 10'
  | 'foam grade 15'
  | 'foam grade 20'
  | 'foam grade 30';

/** Of bone and of its stand-ins: a teaching value, as it is commonly taken. */
export const BONE_POISSON = 0.3;

const remembered = (value: number, source: string): BoneNumber => ({
  value,
  source,
  howRead: 'from memory',
});

function foam(grade: number, density: number, modulus: number, strength: number): BoneEntry {
  const nominal = (value: number): BoneNumber => remembered(value, 'astm-f1839');
  return {
    what: `polyurethane foam of ${grade} pounds a cubic foot, nominal`,
    density: nominal(density),
    modulus: nominal(modulus),
    strength: nominal(strength),
  };
}

const measured = (value: number, sd: number): BoneNumber => ({
  value,
  sd,
  source: 'seliktar-2003',
  howRead: 'abstract',
});

/** One strength for both directions of bone: it was measured by pressing on the face. */
const indented = remembered(10.3, 'anglin-1999');

/**
 * Bones and foams to seat a socket on.
 *
 * Bone: elastic constants of cancellous bone of the socket across and along its surface (Seliktar et al. 2003, abstract),
 * strength by indentation (Anglin et al. 1999, from memory). Foam: nominal values of the grades of ASTM F1839, from
 * memory; what was measured on such foams is less (Patel et al. 2008), and the published checks say by how much.
 */
export const bones: Readonly<Record<BoneName, BoneEntry>> = {
  'bone, across the face': {
    what: 'cancellous bone of the socket, pressed across its surface',
    modulus: measured(326, 78),
    strength: indented,
  },
  'bone, along the face': {
    what: 'the same bone, pressed along the surface',
    modulus: measured(144, 22),
    strength: indented,
  },
  'foam grade 10': foam(10, 0.16, 58, 2.2),
  'foam grade 15': foam(15, 0.24, 123, 4.9),
  'foam grade 20': foam(20, 0.32, 210, 8.4),
  'foam grade 30': foam(30, 0.48, 445, 18),
};

export const boneNames = Object.keys(bones) as readonly BoneName[];

/**
 * The hard shell of bone, MPa. No seat here is made of it: it is told beside the others so that one sees how far off
 * they are.
 */
export const corticalModulus = {
  low: 4000,
  high: 30_000,
  howRead: 'common practice',
} as const;

/**
 * A bone as the builders take it: `bone` of a peg or a keel, and, with a thickness, `layer` of a bed.
 *
 * @throws RangeError for a name that is none
 */
export function boneOf(name: BoneName): Bone {
  if (!Object.hasOwn(bones, name)) {
    throw new RangeError(`name is ${name}; allowed: ${boneNames.join(', ')}`);
  }
  const { modulus, strength } = bones[name];
  return { modulus: modulus.value, poisson: BONE_POISSON, strength: strength.value };
}

/** Strength over modulus of the nominal foams, on the average: the strain at which they yield. */
const YIELD_STRAIN = ([10, 15, 20, 30] as const).reduce((sum, grade) => {
  const { modulus, strength } = bones[`foam grade ${grade}`];
  return sum + strength.value / modulus.value / 4;
}, 0);

/**
 * Press at which bone of a modulus yields, MPa: that of the bone or foam in the list which has it, or else the strain at
 * which the foams yield times the modulus, a teaching value.
 *
 * @param modulus MPa
 */
export function boneStrength(modulus: number): number {
  const name = boneWithModulus(modulus);
  return name === undefined ? YIELD_STRAIN * modulus : bones[name].strength.value;
}

/** The bone or foam that has a modulus, MPa; undefined where none has just that. */
export function boneWithModulus(modulus: number): BoneName | undefined {
  return boneNames.find((name) => bones[name].modulus.value === modulus);
}
