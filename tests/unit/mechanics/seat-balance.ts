import type {
  SeatElement,
  SeatLoad,
  SeatSolution,
  Vector3,
} from '../../../sims/mechanics/index.ts';
import { movementOf } from './seat-oracle.ts';

/** What is left of force and moment once the elements have answered, as a share of the load, or of `size`. */
export function imbalance(
  elements: readonly SeatElement[],
  load: SeatLoad,
  solution: SeatSolution,
  size: number = Math.hypot(...load.force),
): number {
  const force: [number, number, number] = [...load.force];
  const moment: [number, number, number] = cross(load.point, load.force);
  const q = [...solution.displacement, ...solution.rotation];
  elements.forEach((element, i) => {
    const answer = solution.elements[i];
    if (answer === undefined) return;
    const size = Math.hypot(...element.normal);
    const { gap, moved } = movementOf(element, q);
    const n = element.normal.map((part) => part / size) as unknown as Vector3;
    const aside = moved.map((part, k) => part - gap * (n[k] ?? 0));
    const far = Math.hypot(...aside);
    const side = far > 0 ? answer.tangentialForce / far : 0;
    const pushed = n.map(
      (part, k) => answer.normalForce * part - side * (aside[k] ?? 0),
    ) as unknown as Vector3;
    const turned = cross(element.position, pushed);
    for (let k = 0; k < 3; k++) {
      force[k] = (force[k] ?? 0) + (pushed[k] ?? 0);
      moment[k] = (moment[k] ?? 0) + (turned[k] ?? 0);
    }
  });
  return Math.max(Math.hypot(...force) / size, Math.hypot(...moment) / (size * 40));
}

function cross([a, b, c]: Vector3, [x, y, z]: Vector3): [number, number, number] {
  return [b * z - c * y, c * x - a * z, a * y - b * x];
}
