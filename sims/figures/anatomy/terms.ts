/** Which vocabulary a drawing is lettered in: the trade's, or plain words for a reader of about eleven. */
export type Words = 'trade' | 'plain';

/** Lines of lettering by part and vocabulary. */
export const terms = {
  acromion: { trade: ['acromion'], plain: ['bony roof'] },
  clavicle: { trade: ['clavicle'], plain: ['collar bone'] },
  scapula: { trade: ['scapula'], plain: ['shoulder', 'blade'] },
  humerus: { trade: ['humerus'], plain: ['arm bone'] },
  head: { trade: ['humeral', 'head'], plain: ['ball'] },
  glenoid: { trade: ['glenoid'], plain: ['socket'] },
  labrum: { trade: ['labrum'], plain: ['soft rim'] },
  cartilage: { trade: ['cartilage'], plain: ['smooth lining'] },
  coracoid: { trade: ['coracoid'], plain: ['bony hook'] },
  cuff: { trade: ['supraspinatus', 'tendon'], plain: ['tendon'] },
  deltoid: { trade: ['deltoid'], plain: ['muscle'] },
  greaterTuberosity: { trade: ['greater', 'tuberosity'], plain: ['bony', 'bump'] },
  lesserTuberosity: { trade: ['lesser', 'tuberosity'], plain: ['bony', 'bump'] },
  subscapularis: { trade: ['subscapularis'], plain: ['front muscle'] },
  plastic: { trade: ['polyethylene'], plain: ['plastic', 'cup'] },
  hollow: { trade: ['articular', 'surface'], plain: ['hollow for', 'the ball'] },
  cement: { trade: ['bone', 'cement'], plain: ['bone', 'cement'] },
  bone: { trade: ['bone'], plain: ['bone'] },
  ball: { trade: ['metal head'], plain: ['metal ball'] },
  neck: { trade: ['neck'], plain: ['neck'] },
  stem: { trade: ['stem'], plain: ['stem'] },
  peg: { trade: ['peg'], plain: ['peg'] },
  keel: { trade: ['keel'], plain: ['fin'] },
  tray: { trade: ['metal', 'back'], plain: ['metal', 'back'] },
  post: { trade: ['centre', 'post'], plain: ['post'] },
  infraspinatus: { trade: ['infraspinatus'], plain: ['back muscle'] },
} as const satisfies Record<string, Record<Words, readonly string[]>>;

export type Term = keyof typeof terms;

/** Directions as [left, right, up, down] on the sheet, for a right shoulder. */
export const directions = {
  front: {
    trade: ['lateral', 'medial', 'superior', 'inferior'],
    plain: ['outside', 'chest side', 'up', 'down'],
  },
  above: {
    trade: ['lateral', 'medial', 'posterior', 'anterior'],
    plain: ['outside', 'chest side', 'back', 'front'],
  },
  face: {
    trade: ['posterior', 'anterior', 'superior', 'inferior'],
    plain: ['back', 'front', 'up', 'down'],
  },
} as const satisfies Record<string, Record<Words, readonly [string, string, string, string]>>;
