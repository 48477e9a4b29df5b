import { bones, type BoneName, type BoneNumber } from '../../mechanics/index.ts';

/** Sources of the moduli by the names they go by; the course’s list of sources has the rest. */
const sourceNames: Readonly<Record<string, string>> = {
  'seliktar-2003': 'Seliktar et al. 2003',
  'astm-f1839': 'ASTM F1839',
};

const readWords: Readonly<Record<BoneNumber['howRead'], string>> = {
  abstract: 'read as an abstract',
  'from memory': 'from memory',
  'common practice': 'common practice',
  'teaching value': 'a teaching value',
};

/** Where the modulus of a bone or a foam comes from, in a sentence. */
export function boneSource(name: BoneName): string {
  const { what, modulus } = bones[name];
  const { value, sd, source, howRead } = modulus;
  const number = `${value}${sd === undefined ? '' : `\u00a0±\u00a0${sd}`}\u00a0MPa`;
  const from = [sourceNames[source ?? ''] ?? source, readWords[howRead]].filter(
    (each) => each !== undefined,
  );
  const sentence = `${what}: ${number} (${from.join(', ')}).`;
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
