import { describe, expect, it } from 'vitest';
import { readMessage, readShow, type Message } from '../../../site/lecture/link.ts';
import { opening } from '../../../site/lecture/show.ts';

describe('readMessage', () => {
  it.each<Message>([
    { kind: 'ask' },
    { kind: 'stands', stage: 'a', show: { ...opening, step: 3, startedAt: 5 } },
    { kind: 'leaves', stage: 'a' },
    { kind: 'do', stage: 'a', deed: 'forward' },
  ])('takes $kind as it was sent', (message) => {
    expect(readMessage(structuredClone(message))).toEqual(message);
  });

  it.each([
    null,
    'ask',
    {},
    { kind: 'sing' },
    { kind: 'do', stage: 'a', deed: 'format the disk' },
    { kind: 'do', deed: 'forward' },
    { kind: 'stands', stage: 'a', show: null },
    { kind: 'stands', stage: 7, show: opening },
  ])('turns %j away', (data) => {
    expect(readMessage(data)).toBeNull();
  });
});

describe('readShow', () => {
  it('takes a show, and drops what does not belong to it', () => {
    expect(readShow({ ...opening, more: 1 })).toEqual(opening);
  });

  it.each([
    { ...opening, step: -1 },
    { ...opening, step: 1.5 },
    { ...opening, build: '0' },
    { ...opening, isDark: 'no' },
    { ...opening, startedAt: Infinity },
    { ...opening, startedAt: undefined },
    [],
  ])('turns %j away', (value) => {
    expect(readShow(value)).toBeNull();
  });
});
