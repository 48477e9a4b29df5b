/**
 * Size of each drawing's sheet in drawing units, for whoever lays something over a drawing, and where its
 * 0, 0 mm lies with how many units one mm takes. In the joint drawings that point is the centre of the head; in the
 * component drawings the middle of the face or the deepest point of the hollow; in the body the middle of the chest
 * at the height of the shoulder tips.
 */
export const sheets = {
  body: { width: 440, height: 440, origin: [282, 214], scale: 0.6 },
  front: { width: 440, height: 430, origin: [208, 204], scale: 2.5 },
  above: { width: 440, height: 420, origin: [168, 196], scale: 2.8 },
  face: { width: 440, height: 408, origin: [184, 166], scale: 6.6 },
  section: { width: 440, height: 456, origin: [214, 190], scale: 7 },
  ball: { width: 440, height: 424, origin: [222, 118], scale: 3 },
} as const;
