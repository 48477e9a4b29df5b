import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromHash, toHash } from '../../../site/lecture/place-address.ts';

describe('toHash and fromHash', () => {
  it('count from 1, and name builds only where there are any', () => {
    expect(toHash({ step: 3, build: 0 })).toBe('#4');
    expect(toHash({ step: 3, build: 2 })).toBe('#4.2');
  });

  it('undo each other', () => {
    fc.assert(
      fc.property(fc.nat(9998), fc.nat(999), (step, build) => {
        expect(fromHash(toHash({ step, build }))).toEqual({ step, build });
      }),
    );
  });

  it.each(['', '#', '#0', '#-1', '#4.', '#4.2.1', '#1e9', '#99999', '#<b>', '#%', '# 4', '#4.x'])(
    'finds no place in %j',
    (hash) => {
      expect(fromHash(hash)).toBeNull();
    },
  );
});
