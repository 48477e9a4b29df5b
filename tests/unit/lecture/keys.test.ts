import { describe, expect, it } from 'vitest';
import { wishOf, type Focus, type KeyPress } from '../../../site/lecture/keys.ts';

const press = (key: string, held: Partial<KeyPress> = {}): KeyPress => ({
  key,
  shiftKey: false,
  ctrlKey: false,
  altKey: false,
  metaKey: false,
  repeat: false,
  ...held,
});

describe('wishOf', () => {
  // Key, then what it asks for with the focus on the page, on a control, and in a text field.
  it.each([
    ['PageDown', 'forward', 'forward', 'forward'],
    ['PageUp', 'back', 'back', 'back'],
    ['.', 'dark', 'dark', null],
    ['b', 'dark', 'dark', null],
    ['B', 'dark', 'dark', null],
    ['n', 'forward', 'forward', null],
    ['p', 'back', 'back', null],
    ['f', 'full-screen', 'full-screen', null],
    ['s', 'speaker-window', 'speaker-window', null],
    ['ArrowRight', 'forward', null, null],
    ['ArrowDown', 'forward', null, null],
    ['ArrowLeft', 'back', null, null],
    ['ArrowUp', 'back', null, null],
    [' ', 'forward', null, null],
    ['Enter', 'forward', null, null],
    ['Backspace', 'back', null, null],
    ['Home', 'first', null, null],
    ['End', 'last', null, null],
    ['Escape', null, null, null],
    ['F5', null, null, null],
    ['Tab', null, null, null],
    ['x', null, null, null],
    ['toString', null, null, null],
  ] as const)('%s', (key, onPage, onControl, inText) => {
    const wishes = (['page', 'control', 'text'] satisfies Focus[]).map((focus) =>
      wishOf(press(key), focus),
    );
    expect(wishes).toEqual([onPage, onControl, inText]);
  });

  it('goes back on a shifted space', () => {
    expect(wishOf(press(' ', { shiftKey: true }), 'page')).toBe('back');
  });

  it.each(['ctrlKey', 'altKey', 'metaKey'] as const)('leaves a key with %s alone', (modifier) => {
    expect(wishOf(press('PageDown', { [modifier]: true }), 'page')).toBeNull();
  });
});
