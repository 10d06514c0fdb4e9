/**
 * The nearest known words to a mistyped one: optimal string alignment, where a swapped pair counts once.
 * At most three edits, or `most`, and more than 0.4 alike; ties are all given, sorted; nothing for a single letter.
 */
export function suggest(word: string, known: readonly string[], most: 2 | 3 = 3): string[] {
  const typed = word.toLowerCase();
  if (typed.length < 2 || typed.length > 60) return [];
  let best = most + 1;
  let found: string[] = [];
  for (const candidate of known) {
    if (candidate.length < 2 || Math.abs(candidate.length - typed.length) > Math.min(3, best)) continue;
    const edits = distance(typed, candidate.toLowerCase());
    const longest = Math.max(typed.length, candidate.length);
    if (edits > most || (longest - edits) / longest <= 0.4) continue;
    if (edits < best) [best, found] = [edits, [candidate]];
    else if (edits === best) found.push(candidate);
  }
  return found.sort();
}

function distance(a: string, b: string): number {
  if (Math.abs(a.length - b.length) > 3) return 4;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + change);
      // Before the first letter stands nothing, which is like no letter.
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) cost = Math.min(cost, before[j - 2]! + 1);
      row.push(cost);
    }
    if (Math.min(...row) > 3) return 4;
    [before, last] = [last, row];
  }
  return last[b.length]!;
}
