import type { ContactSearch } from './contact-search.ts';
import { settle } from './face-contact.ts';

/** A ball let down at one translation in the direction of the search: what was found. */
export interface Look {
  /** mm */
  readonly translation: number;
  /** Of the ball's centre, less its radius, mm. */
  readonly height: number;
  readonly ratio: number;
  /** The contact, mm. */
  readonly x: number;
  readonly y: number;
  readonly onRim: boolean;
  /** Radius of the circle on which the ball's centre would go on if the contact stayed where it is, mm. */
  readonly section: number;
}

/** Lets the ball down at a translation. */
export function lookAt(search: ContactSearch, translation: number): Look {
  settle(search, translation);
  const { height, ratio, x, y, onRim, rr, ux, uy } = search;
  const aside = x * uy - y * ux;
  const section = Math.sqrt(Math.max(0, rr - aside * aside));
  return { translation, height, ratio, x, y, onRim, section };
}
