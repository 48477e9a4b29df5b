import type { Point } from '../../figures/view.ts';
import type { Ground } from './settings.ts';

/** Radius of a back, mm; a flat one has none that ends. */
export function radiusOf({ back, backRadius }: Pick<Ground, 'back' | 'backRadius'>): number {
  return back === 'round' ? backRadius : Infinity;
}

/** How far a back stands over its lowest place, which is in its middle, mm. */
export function riseOf(radius: number, { x, y }: Point): number {
  if (radius === Infinity) return 0;
  const away = x ** 2 + y ** 2;
  return away / (radius + Math.sqrt(Math.max(0, radius ** 2 - away)));
}
