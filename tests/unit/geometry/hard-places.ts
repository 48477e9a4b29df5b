import type { TestFace } from './faces.ts';

/** A face, a ball and a place where a contact is easily overlooked. */
export interface HardPlace {
  readonly what: string;
  readonly input: TestFace;
  readonly ballRadius: number;
  /** rad from anterior toward superior, and mm from the middle. */
  readonly direction: number;
  readonly translation: number;
}

export const hardPlaces: readonly HardPlace[] = [
  {
    what: 'two places of a lip that is wide on a tight curve',
    input: {
      outline: { kind: 'pear', width: 23.6, height: 40.6, upperWidth: 22.8 },
      curvatureRadiusAP: 22.4,
      curvatureRadiusSI: 22.4,
      labrum: { height: 3, width: 7.6 },
      defect: { direction: -2.0944, depth: 10.5, kind: 'segment' },
    },
    ballRadius: 15.05,
    direction: 1.4231174420506694,
    translation: 4.271971880660219,
  },
  {
    what: 'a sharp peak at a steep lip, hardly higher than the contact in the hollow',
    input: {
      outline: { kind: 'ellipse', width: 31.88138927187835, height: 70.57769752485623 },
      curvatureRadiusAP: 44.06307611176557,
      curvatureRadiusSI: 44.06307611176557,
      labrum: { height: 2.515643799684776, width: 0.7771139607658208 },
      defect: { direction: 5.989556582513594, depth: 4.467416632951896, kind: 'cut' },
    },
    ballRadius: 8.812615768144383,
    direction: 1.4759421996955993,
    translation: 24.56527465936455,
  },
  {
    what: 'a step at the end of a segment, whose estimate is too high',
    input: {
      outline: { kind: 'circle', width: 32.9, height: 32.9 },
      curvatureRadiusAP: 32.8,
      curvatureRadiusSI: 18.2,
      labrum: { height: 5, width: 5.8 },
      defect: { direction: -1.832595714594046, depth: 14.4, kind: 'segment' },
    },
    ballRadius: 15.2,
    direction: 5.835244270554552,
    translation: 2.1496760632580645,
  },
  {
    what: 'a corner with a second maximum three degrees beside it',
    input: {
      outline: { kind: 'pear', width: 35.2, height: 22.3, upperWidth: 34.1 },
      curvatureRadiusAP: 19.9,
      curvatureRadiusSI: 19.9,
      defect: { direction: -3.926990816987241, depth: 3.8, kind: 'cut' },
    },
    ballRadius: 29.6,
    direction: 2.0582545967811483,
    translation: 3.3136223118433965,
  },
  {
    what: 'a lip all but as tight as the ball, beside a segment',
    input: {
      outline: { kind: 'circle', width: 24.46159407471381, height: 24.46159407471381 },
      curvatureRadiusAP: 19.026655179678492,
      curvatureRadiusSI: 19.026655179678492,
      labrum: { height: 0.24363523928617836, width: 2.799999989103526 },
      defect: {
        direction: 0.7923502518402169,
        depth: 1.8890281401387334,
        kind: 'segment',
        span: 2.4091830472038978,
      },
    },
    ballRadius: 14.584026667449079,
    direction: 0,
    translation: 3.1541238757429637,
  },
  {
    what: 'a hollow that all but fits from top to bottom, touched on both sides',
    input: {
      outline: { kind: 'circle', width: 25.8, height: 25.8 },
      curvatureRadiusAP: 36.5,
      curvatureRadiusSI: 16.8,
      defect: { direction: -4.1887902047863905, depth: 2.5, kind: 'cut' },
    },
    ballRadius: 16.65,
    direction: 0,
    translation: 3.5011956857908135,
  },
  {
    what: 'the last of the rim, which the ball touches from the side',
    input: {
      outline: {
        kind: 'pear',
        width: 39.999999708961695,
        height: 71.99999944260345,
        upperWidth: 21.256661666706822,
      },
      curvatureRadiusAP: 83.51931182069889,
      curvatureRadiusSI: 83.51931182069889,
      labrum: { height: 0.10000003268942238, width: 2.282832019349016 },
    },
    ballRadius: 8.351931617657044,
    direction: 2.195698936627877,
    translation: 29.33509173363916,
  },
  {
    what: 'the end of a cut that all but runs along a ray, where lip turns to edge',
    input: {
      outline: { kind: 'ellipse', width: 15.000000128056854, height: 7.873133117898324 },
      curvatureRadiusAP: 9.31736734558054,
      curvatureRadiusSI: 9.31736734558054,
      labrum: { height: 2.094040069726314, width: 2.092927308517009 },
      defect: { direction: 1.9812537134637147, depth: 1.1058183897649094, kind: 'cut' },
    },
    ballRadius: 4.658683696653324,
    direction: 2.8742548299547432,
    translation: 2.771963917625272,
  },
  {
    what: 'the end of a cut, where the estimate puts the maximum a place too far',
    input: {
      outline: { kind: 'ellipse', width: 15.00000020954758, height: 7.372574569214978 },
      curvatureRadiusAP: 9.19265190682944,
      curvatureRadiusSI: 19.955045722471226,
      labrum: { height: 0.35048059162240497, width: 2.464329797804509 },
      defect: { direction: 5.31500423661527, depth: 0.3000000221825502, kind: 'cut' },
    },
    ballRadius: 3,
    direction: 0,
    translation: 4.765123554181103,
  },
];
