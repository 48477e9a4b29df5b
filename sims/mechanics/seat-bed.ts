import { inRange, positive } from '../geometry/numeric.ts';
import { foundationModulus, type ElasticLayer } from './foundation.ts';
import { outlineCells, type SeatOutline } from './seat-outline.ts';
import type { SeatElement } from './seat-types.ts';

/** What a socket stands on. */
export interface Bed {
  /** The layer of bone, or of a stand-in for it, that gives; what lies deeper does not. */
  readonly layer: ElasticLayer;
  /** z of the back of the socket at its middle, mm; it is the lowest place of a round back. */
  readonly level: number;
  /** N/mm²: the pull at which the bond tears and goes on slipping; Infinity holds at any. No bond where it is left out. */
  readonly bond?: number | undefined;
  /** Press at which the layer yields, MPa, above 0; it bears any where this is left out. */
  readonly strength?: number | undefined;
  /** Whether the bed also answers movement along it, by the layer's shear. A bonded bed does unless told otherwise. */
  readonly isRough?: boolean | undefined;
  /** How many elements, about; 2,000 where it is left out. */
  readonly elements?: number | undefined;
}

const USUAL_ELEMENTS = 2000;

/**
 * The elements under a flat back.
 *
 * Stiffness: each element is a column of the layer, squeezed by its confined modulus over its thickness and sheared by
 * E / 2(1 + ν) over its thickness.
 *
 * @throws RangeError for an outline, layer or bond out of range
 */
export function flatBed(outline: SeatOutline, bed: Bed): readonly SeatElement[] {
  return bedOf(outline, bed, Infinity);
}

/**
 * The elements under a round back: part of a sphere that bulges toward the bone, its lowest place at `level`. Each
 * pushes toward the middle of that sphere.
 *
 * @param backRadius mm, more than the outline's half-width at every place
 * @throws RangeError for an outline that leaves the sphere
 */
export function sphericalBed(
  outline: SeatOutline,
  backRadius: number,
  bed: Bed,
): readonly SeatElement[] {
  return bedOf(outline, bed, positive('backRadius', backRadius, 'mm'));
}

function bedOf(outline: SeatOutline, bed: Bed, radius: number): readonly SeatElement[] {
  const { layer, level, bond, strength, elements = USUAL_ELEMENTS } = bed;
  const { thickness, modulus, poisson } = layer;
  const press = foundationModulus(layer);
  const shear = (bed.isRough ?? bond !== undefined) ? modulus / (2 * (1 + poisson)) / thickness : 0;
  inRange('level', level, -Infinity, Infinity, 'mm');
  if (strength !== undefined) positive('strength', strength, 'MPa');
  return outlineCells(outline, elements).map(({ x, y, area: flat }) => {
    const away = Math.hypot(x, y);
    if (away >= radius) {
      throw new RangeError(
        `backRadius is ${radius}; allowed: more than ${away.toFixed(1)} mm, the outline’s reach`,
      );
    }
    const upward = radius === Infinity ? 1 : Math.sqrt(radius ** 2 - away ** 2) / radius;
    const area = flat / upward;
    const rise = radius === Infinity ? 0 : radius * (1 - upward);
    return {
      position: [x, y, level + rise],
      normal: [0 - x / radius, 0 - y / radius, upward],
      normalStiffness: press * area,
      tangentialStiffness: shear * area,
      ...bondOf(bond, area),
      ...(strength === undefined ? {} : { crush: strength * area }),
    };
  });
}

function bondOf(bond: number | undefined, area: number): Pick<SeatElement, 'tension' | 'strength'> {
  if (bond === undefined) return { tension: 'none' };
  if (bond === Infinity) return { tension: 'elastic' };
  return { tension: 'limited', strength: inRange('bond', bond, 0, Infinity, 'N/mm²') * area };
}
