/**
 * Mechanics of a socket under load. Pure, no DOM, imports only geometry.
 * Lengths in mm, angles in rad, forces in N. The names below are public and stable.
 */
export {
  restPosition,
  type RestPosition,
  type RestQuestion,
  type RestState,
} from './rest-position.ts';
