/** Times of so many runs after some to warm up, ms. The run is told how far on it is, 0 to 1. */
export function times(
  runs: number,
  warmUp: number,
  run: (part: number) => void,
): readonly number[] {
  for (let i = 0; i < warmUp; i++) run((i % 10) / 10);
  return Array.from({ length: runs }, (_, i) => {
    const start = performance.now();
    run(i / runs);
    return performance.now() - start;
  });
}
