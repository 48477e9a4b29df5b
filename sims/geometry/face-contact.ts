import { heightOver, ratioOf } from './contact-offer.ts';
import type { ContactSearch } from './contact-search.ts';
import { heightAt } from './face-shape.ts';
import { offerHollow } from './hollow-contact.ts';
import { offerRim } from './rim-contact.ts';

/**
 * Lets the ball down on the face with its centre `translation` mm from the middle in the direction of the search, and
 * leaves the contact in the search: the highest of the contacts in the hollow, on the lip and on the rim. With no contact
 * at all the height is −Infinity.
 */
export function settle(search: ContactSearch, translation: number): void {
  settleAt(search, translation);
  if (translation === 0) resistOutward(search);
}

function settleAt(search: ContactSearch, translation: number): void {
  search.cx = translation * search.ux;
  search.cy = translation * search.uy;
  search.height = -Infinity;
  search.ratio = -Infinity;
  const inHollow = offerHollow(search);
  if (inHollow && search.hollowDecides) return;
  offerRim(search);
}

/**
 * At rest in the middle a ball may touch many places at once: all of the hollow if it conforms, both sides of the rim if
 * it bridges. Of those that are level the one it would ride up on a hair further out resists.
 */
function resistOutward(search: ContactSearch): void {
  if (search.hollowDecides && !search.onRim) return;
  const { height, ratio, x, y, onRim, inside } = search;
  settleAt(search, HAIR * search.r);
  const ahead = ratioOf(search, search.x, search.y);
  const isFound = search.height > -Infinity;
  search.height = height;
  if (isFound && ahead > ratio && isLevelAtRest(search, height)) {
    search.ratio = ahead;
    return;
  }
  search.ratio = ratio;
  search.x = x;
  search.y = y;
  search.onRim = onRim;
  search.inside = inside;
}

/** Whether the contact found last would bear a ball in the middle as well. */
function isLevelAtRest(search: ContactSearch, height: number): boolean {
  if (search.conforms && search.lipSlope === 0) return true;
  const { x, y } = search;
  const level = heightOver(search, x, y, heightAt(search.face, x, y));
  return level >= height - LEVEL_AT_REST * search.r;
}

/** How far out a ball is put to see where it will ride up, as a share of its radius. */
const HAIR = 1e-6;

/** Heights this near, as a share of the ball's radius, are level for a ball at rest in the middle. */
const LEVEL_AT_REST = 1e-9;
