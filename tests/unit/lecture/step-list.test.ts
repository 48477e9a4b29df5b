import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { stepsOf } from '../../../site/lecture/step-list.ts';

const step = (tag: string, notes = '<Notes slot="notes">'): string =>
  `<Step ${tag}>\nWords.\n${notes}\nSay this.\n</Notes>\n</Step>\n`;

describe('stepsOf', () => {
  it('lists titles and minutes in order', () => {
    const source =
      step('title="One" minutes={1}') + step('title="Two" minutes={0.5} layout="beside"');
    expect(stepsOf(source, 1.5, 'deck')).toEqual([
      { title: 'One', minutes: 1 },
      { title: 'Two', minutes: 0.5 },
    ]);
  });

  it.each([
    ['no step', '', 'deck has no step.'],
    ['no title', step('minutes={1}'), 'deck, step 1 has no title'],
    ['no minutes', step('title="One"'), 'step 1 (One) has no minutes'],
    ['no time', step('title="One" minutes={0}'), 'step 1 (One) has no minutes'],
    [
      'no notes',
      step('title="One" minutes={1}', '<Notes>'),
      'step 1 (One) has no <Notes slot="notes">',
    ],
    ['a wrong sum', step('title="One" minutes={2}'), 'take 2 minutes; its head says 1'],
  ])('stops at %s', (_, source, message) => {
    expect(() => stepsOf(source, 1, 'deck')).toThrow(message);
  });

  it.each(globSync('lessons/*/lecture.mdx'))('%s has 9 to 13 steps and keeps its time', (file) => {
    const source = readFileSync(file, 'utf8');
    const planned = Number(/^minutes: ([\d.]+)$/m.exec(source)?.[1]);
    const { length } = stepsOf(source, planned, file);
    expect(length).toBeGreaterThanOrEqual(9);
    expect(length).toBeLessThanOrEqual(13);
  });
});
