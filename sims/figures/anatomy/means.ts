/**
 * Sizes the drawings are made to. Lengths in mm, angles in degrees.
 * Joint: Iannotti 1992, J Bone Joint Surg Am 74:491–500 (abstract). Depths and inclination: PMC12925909 (abstract).
 * Upper width of the face: Chen 2023, Folia Morphol 82:325–331 (abstract). Version: Matsumura 2014 (abstract).
 * The values marked "teaching value" only shape the picture; nothing is computed from them.
 */
export const head = {
  radiusFront: 24,
  /** About 2 mm less in a section from above. */
  radiusAbove: 22,
  /** From the plane of the neck to the top of the head, along its axis. */
  height: 19,
  /** Between the shaft's axis and the head's. Common practice. */
  neckShaftAngle: 135,
  /** Turned backwards from the elbow's axis, middle of 20–30°. Common practice. */
  retroversion: 25,
  /** Of the head's centre, towards the chest from the shaft's axis. Teaching value. */
  offset: 7,
} as const;

export const face = {
  height: 39,
  lowerWidth: 29,
  upperWidth: 20,
  /** Of the bone, top to bottom. */
  boneDepth: 4,
  /** The same from front to back. Teaching value. */
  boneDepthAbove: 2.2,
  /** With the labrum, top to bottom. */
  labralDepth: 7.1,
  /** The same from front to back. Teaching value. */
  labralDepthAbove: 4.6,
  /** Of the socket's surface over the head's. */
  radialMismatch: 2.3,
  /** Of the bony face, upwards. */
  inclination: 7,
  retroversion: 1,
} as const;

/** Between the blade and the body's frontal plane. Teaching value. */
export const scapularPlane = 33;

/** Of the fluid film, drawn wider than it is so that it can be seen. Teaching value. */
export const film = 0.5;
