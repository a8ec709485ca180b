/** The candidate that the fewest slips of the keys turn into `word`, unless even that one is far from it. */
export function nearest(word: string, candidates: readonly string[]): string | undefined {
  const plain = folded(word);
  const ranked = candidates
    .map((candidate) => ({ candidate, slips: slips(plain, folded(candidate)) }))
    .sort((a, b) => a.slips - b.slips);
  const best = ranked[0];
  if (best === undefined) return undefined;
  const allowed = Math.floor(Math.max(plain.length, best.candidate.length) / 3);
  return best.slips <= allowed ? best.candidate : undefined;
}

/** Long texts are cut: they are near to nothing, and the table of slips grows with their length. */
function folded(word: string): string {
  return word
    .slice(0, 40)
    .toLowerCase()
    .replace(/[\s_-]/g, '');
}

/** Damerau's distance (optimal string alignment): letters added, left out, changed, or swapped with a neighbour. */
function slips(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(changed, (last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, (beforeLast[j - 2] ?? 0) + 1);
      }
      row.push(least);
    }
    [beforeLast, last] = [last, row];
  }
  return last[b.length] ?? 0;
}
