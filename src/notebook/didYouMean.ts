/** How far a word may be from a known one and still be taken for a slip of it. */
const reach = (word: string): number => Math.max(1, Math.floor(word.length / 3));

/**
 * Counts the slips between two words: letters added, dropped, changed, or swapped with their
 * neighbour (optimal string alignment distance; each stretch is edited at most once).
 *
 * @param from one word
 * @param to the other word
 * @returns a whole number, 0 for equal words; never throws
 */
export function slipsBetween(from: string, to: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row++) {
    const current = [row];
    for (let column = 1; column <= to.length; column++) {
      const changed = from[row - 1] === to[column - 1] ? 0 : 1;
      let least = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + changed,
      );
      const swapped = from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      if (row > 1 && column > 1 && swapped) {
        least = Math.min(least, (beforeLast[column - 2] ?? 0) + 1);
      }
      current.push(least);
    }
    beforeLast = last;
    last = current;
  }
  return last[to.length] ?? 0;
}

/**
 * Finds the known word that the coach most likely meant.
 *
 * @param word what was written; upper and lower case count as equal
 * @param candidates the words that would have been right
 * @returns the nearest candidate within a third of the word's length (at least one slip), the
 *   first one on a tie, or undefined; never throws
 */
export function didYouMean(word: string, candidates: readonly string[]): string | undefined {
  const written = word.toLowerCase();
  let nearest: string | undefined;
  let fewest = reach(word) + 1;
  for (const candidate of candidates) {
    // A difference in length is a lower bound: it spares the table for hopeless words.
    if (Math.abs(candidate.length - word.length) >= fewest) continue;
    const slips = slipsBetween(written, candidate.toLowerCase());
    if (slips < fewest) {
      fewest = slips;
      nearest = candidate;
    }
  }
  return nearest;
}
