import type { Component } from 'svelte';
import { beforeAll, describe, expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import BallAndNeck from '../../sims/figures/anatomy/BallAndNeck.svelte';
import ShoulderFromAbove from '../../sims/figures/anatomy/ShoulderFromAbove.svelte';
import ShoulderFront from '../../sims/figures/anatomy/ShoulderFront.svelte';
import SocketComponentFace from '../../sims/figures/anatomy/SocketComponentFace.svelte';
import SocketComponentSection from '../../sims/figures/anatomy/SocketComponentSection.svelte';
import WhereInTheBody from '../../sims/figures/anatomy/WhereInTheBody.svelte';
import type { Fixation } from '../../sims/figures/anatomy/socket-component.ts';
import type { Words } from '../../sims/figures/anatomy/terms.ts';
import '../../site/styles/fonts.css';
import '../../site/styles/tokens.css';

/** Width of a drawing on a 390 px phone. */
const PHONE = 350;

const fixations = ['pegs', 'keel', 'metal-backed'] as const;
interface Props {
  readonly words?: Words;
  readonly fixation?: Fixation;
}
type Drawing = Component<Props>;
const drawings: readonly (readonly [string, Drawing, Props])[] = [
  ['where in the body', WhereInTheBody, {}],
  ['shoulder front', ShoulderFront, {}],
  ['shoulder from above', ShoulderFromAbove, {}],
  ['ball and neck', BallAndNeck, {}],
  ...fixations.map((fixation) => [`face, ${fixation}`, SocketComponentFace, { fixation }] as const),
  ...fixations.map(
    (fixation) => [`section, ${fixation}`, SocketComponentSection, { fixation }] as const,
  ),
];

async function draw(drawing: Drawing, props: Props): Promise<SVGSVGElement> {
  const { container } = await render(drawing, props);
  container.setAttribute('style', `width: ${PHONE}px`);
  const svg = container.querySelector('svg');
  if (!svg) throw new Error('no drawing');
  return svg;
}

beforeAll(async () => {
  const faces = await document.fonts.load("17px 'Sofia Sans Semi Condensed Variable'");
  expect(faces.length).toBeGreaterThan(0);
});

describe.each(['trade', 'plain'] as const)('in %s words', (words) => {
  test.each(drawings)(
    '%s: lettering is large enough, inside, and apart',
    async (_, component, props) => {
      const svg = await draw(component, { words, ...props });
      const sheet = svg.getBoundingClientRect();
      expect(sheet.width).toBeCloseTo(PHONE, 0);
      const texts = [...svg.querySelectorAll('text')];
      expect(texts.length).toBeGreaterThan(3);
      const boxes = texts.map((text) => ({
        name: text.textContent,
        box: text.getBoundingClientRect(),
      }));
      for (const text of texts) {
        const size =
          Number.parseFloat(getComputedStyle(text).fontSize) *
          (sheet.width / svg.viewBox.baseVal.width);
        expect(size, text.textContent).toBeGreaterThanOrEqual(12);
      }
      for (const { name, box } of boxes) {
        expect(box.left, name).toBeGreaterThanOrEqual(sheet.left);
        expect(box.right, name).toBeLessThanOrEqual(sheet.right);
        expect(box.bottom, name).toBeLessThanOrEqual(sheet.bottom + 1);
      }
      const collisions = boxes.flatMap((a, i) =>
        boxes
          .slice(i + 1)
          .filter((b) => overlap(a.box, b.box))
          .map((b) => `${a.name} / ${b.name}`),
      );
      expect(collisions).toEqual([]);
    },
  );
});

test.each(drawings)(
  '%s: is an image with a name and a description',
  async (_, component, props) => {
    const svg = await draw(component, props);
    expect(svg.getAttribute('role')).toBe('img');
    const parts = (svg.getAttribute('aria-labelledby') ?? '').split(' ');
    expect(parts).toHaveLength(2);
    for (const part of parts) {
      expect(document.getElementById(part)?.textContent.length, part).toBeGreaterThan(10);
    }
  },
);

test('all drawings on one page: no id twice, and every hatch asked for is there', async () => {
  for (const [, component, props] of drawings) {
    await render(component, props);
  }
  const ids = [...document.querySelectorAll('svg [id]')].map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  const asked = [...document.querySelectorAll('[fill^="url("]')].map(
    (shape) => /#(.+)\)/.exec(shape.getAttribute('fill') ?? '')?.[1] ?? '',
  );
  expect(asked.length).toBeGreaterThan(10);
  for (const id of asked) expect(ids, id).toContain(id);
});

/** Whether two boxes share more than the blank space round their letters. */
function overlap(a: DOMRect, b: DOMRect): boolean {
  const slack = 4;
  return (
    a.left < b.right &&
    b.left < a.right &&
    a.top + slack < b.bottom - slack &&
    b.top + slack < a.bottom - slack
  );
}
