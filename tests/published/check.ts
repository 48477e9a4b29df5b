import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';

/**
 * A comparison of the modules with something in print. `hard`: the code must match, for the print states a theorem or an
 * identity. `band`: measurements scatter, a miss is a reason to look. `disagreement`: theory and measurement are known
 * to part here, and the check fails as soon as they no longer do.
 */
export type PublishedCheck = {
  readonly what: string;
  /** Ids in lessons/sources.json; several where papers are held against each other, none for plain geometry. */
  readonly sources: readonly string[];
  /** What the modules give: one number, or several that must all pass. */
  readonly compute: () => number | readonly number[];
  readonly expected: number;
  /** In the unit of `expected`. */
  readonly tolerance: number;
  /** Why this much, or, for a disagreement, why they part. */
  readonly why: string;
} & (
  | { readonly kind: 'hard' | 'band' }
  | {
      readonly kind: 'disagreement';
      /** Which way theory misses. */
      readonly theory: 'above' | 'below';
    }
);

interface Fact {
  readonly id: string;
  readonly value?: number;
  readonly sd?: number;
  readonly low?: number;
  readonly high?: number;
}

const lessons = (name: string): string =>
  readFileSync(new URL(`../../lessons/${name}`, import.meta.url), 'utf8');
const facts = parse(lessons('facts.yaml')) as readonly Fact[];
const sourceIds = new Set(
  (JSON.parse(lessons('sources.json')) as readonly { id: string }[]).map((source) => source.id),
);

/** A number of lessons/facts.yaml, so that print is typed in one place only. Throws where there is none. */
export function fact(id: string, field: 'value' | 'sd' | 'low' | 'high' = 'value'): number {
  const number = facts.find((entry) => entry.id === id)?.[field];
  if (number === undefined) throw new Error(`no ${field} of a fact called ${id}`);
  return number;
}

/** Registers one test for each check. */
export function runChecks(checks: readonly PublishedCheck[]): void {
  test.each(checks.map((check) => [check.kind, check.what, check] as const))(
    '%s: %s',
    (_, __, check) => {
      for (const id of check.sources) expect(sourceIds).toContain(id);
      const results = [check.compute()].flat();
      expect(results.length).toBeGreaterThan(0);
      for (const result of results) {
        const off = result - check.expected;
        expect(off).not.toBeNaN();
        const report = `computed ${result}, print ${check.expected} ± ${check.tolerance}. ${check.why}`;
        if (check.kind === 'disagreement') {
          const beyond = check.theory === 'above' ? off : -off;
          expect(beyond, report).toBeGreaterThan(check.tolerance);
        } else {
          expect(Math.abs(off), report).toBeLessThanOrEqual(check.tolerance);
        }
      }
    },
  );
}
