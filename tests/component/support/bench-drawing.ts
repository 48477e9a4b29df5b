import { expect } from 'vitest';

/** The drawing of the bench on the page. */
export function drawing(): SVGSVGElement {
  const found = document.querySelector<SVGSVGElement>('.picture svg');
  if (found === null) throw new Error('no drawing');
  return found;
}

/** All that is lettered in it, with plain spaces. */
export const lettering = (): string => drawing().textContent.replaceAll('\u00a0', ' ');

/** A number of the strip under it, by its name, as it is written but with plain spaces; '' where there is none. */
export const reading = (name: string): string =>
  [...document.querySelectorAll('dl > div')]
    .find((cell) => cell.textContent.includes(name))
    ?.querySelector('dd')
    ?.textContent.replaceAll('\u00a0', ' ') ?? '';

/** Middles of the points of a radius, in the order they are drawn, on the screen. */
export function points(radius: number): readonly { readonly x: number; readonly y: number }[] {
  return [...drawing().querySelectorAll(`circle[r="${radius}"]`)].map((circle) => {
    const { x, y, width, height } = circle.getBoundingClientRect();
    return { x: x + width / 2, y: y + height / 2 };
  });
}

/** One event of a pointer over the drawing. */
export function send(type: string, x: number, y: number): void {
  const given = { pointerId: 1, button: 0, clientX: x, clientY: y, bubbles: true };
  drawing().dispatchEvent(new PointerEvent(type, given));
}

/** What a slider says once the page is drawn again. */
export async function valueOf(slider: Element): Promise<number> {
  await new Promise(requestAnimationFrame);
  expect(slider).toBeInstanceOf(HTMLInputElement);
  return Number((slider as HTMLInputElement).value);
}

/** Screen pixels a point goes for one unit of a slider, measured by moving it. */
export async function pixelsPerUnit(
  slider: Element,
  move: () => Promise<void>,
  pointX: () => number | undefined,
): Promise<number> {
  const before = pointX() ?? NaN;
  const from = await valueOf(slider);
  (slider as HTMLElement).focus();
  await move();
  const to = await valueOf(slider);
  return ((pointX() ?? NaN) - before) / (to - from);
}
