/** The plane the bench looks at: a level one from above, or that of the blade from the front. */
export type PlaneName = 'above' | 'front';

export const pullIds = [
  'frontCuff',
  'backCuff',
  'others',
  'upperCuff',
  'lowerCuff',
  'deltoid',
] as const;
export type PullId = (typeof pullIds)[number];

/**
 * What a plane shows. Every angle on the bench is counted from straight medial and is positive towards one side of the
 * plane: the back seen from above, up seen from the front. So a socket turned to that side and a force turned to that
 * side add up.
 */
export interface Plane {
  readonly seen: string;
  /** How the socket is turned in this plane. */
  readonly tilt: 'version' | 'inclination';
  readonly tiltName: string;
  readonly pulls: readonly [PullId, PullId, PullId];
  /** Words for the positive and the negative side. */
  readonly towards: readonly [positive: string, negative: string];
  readonly sides: readonly [positive: string, negative: string];
  /** What lies beyond either side of the drawing. */
  readonly ends: readonly [positive: string, negative: string];
  /** What a tilt to either side is called. */
  readonly turned: readonly [positive: string, negative: string];
  /** Where the blade's line points out of the socket on the sheet, degrees counter-clockwise from the right. */
  readonly outward: number;
}

/** The blade lies 33° off the frontal plane in the course's drawings, so seen from above it runs inward and back. */
const BLADE_TO_FRONTAL = 33;

export const planes: Readonly<Record<PlaneName, Plane>> = {
  above: {
    seen: 'seen from above',
    tilt: 'version',
    tiltName: 'Version',
    pulls: ['frontCuff', 'backCuff', 'others'],
    towards: ['to the back', 'to the front'],
    sides: ['back', 'front'],
    ends: ['back of the body', 'front of the body'],
    turned: ['turned back', 'turned forward'],
    outward: 180 + BLADE_TO_FRONTAL,
  },
  front: {
    seen: 'seen from the front',
    tilt: 'inclination',
    tiltName: 'Inclination',
    pulls: ['upperCuff', 'lowerCuff', 'deltoid'],
    towards: ['upward', 'downward'],
    sides: ['upper', 'lower'],
    ends: ['top of the shoulder', 'armpit'],
    turned: ['turned up', 'turned down'],
    outward: 180,
  },
};

export const pullNames: Readonly<Record<PullId, string>> = {
  frontCuff: 'Front cuff',
  backCuff: 'Back cuff',
  others: 'Deltoid and others',
  upperCuff: 'Upper cuff',
  lowerCuff: 'Lower cuff',
  deltoid: 'Deltoid and others',
};

/** The word of a pair that fits the sign of a value; that of the positive side for 0. */
export function sideWord(words: readonly [string, string], value: number): string {
  return value < 0 ? words[1] : words[0];
}
