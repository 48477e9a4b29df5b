/** The ids most like a wrong one: those that share most of their pairs of letters with it. */
export function nearest(id: string, known: readonly string[], count = 4): readonly string[] {
  const wanted = pairs(id);
  const likeness = (other: string): number => {
    const theirs = pairs(other);
    const shared = [...wanted].filter((pair) => theirs.has(pair)).length;
    return shared / Math.max(1, wanted.size + theirs.size - shared);
  };
  return known
    .map((other) => ({ other, score: likeness(other) }))
    .toSorted((a, b) => b.score - a.score)
    .slice(0, count)
    .map(({ other }) => other);
}

function pairs(text: string): ReadonlySet<string> {
  const plain = text.toLowerCase();
  return new Set(Array.from(plain.slice(1), (letter, i) => `${plain.charAt(i)}${letter}`));
}
