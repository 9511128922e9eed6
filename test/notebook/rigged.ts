import { changed } from './goodScenario.ts';

export const chains = '  ten-millimetre: { link: 10 mm, length: 1.8 m, cord: 20 cm }';
export const bands =
  '  red loop: { tension: { 0.9 m: 100 N, 1.4 m: 260 N }, anchor: 2.3 m }\n' +
  '  home loop: { rubber: { width: 22 mm, thickness: 4.5 mm, unstretched: 1 m, strands: 2 }, count: 2 }';
export const groups = `chains:\n${chains}\nbands:\n${bands}\n`;
export const boxSquat = 'lift: box squat, from';

/** The good file with chains and bands on its box squat (its groups stand on lines 27 to 31). */
export function rigged(...changes: readonly (readonly [string, string])[]): string {
  let text = changed(
    ['programs:\n', `${groups}programs:\n`],
    [boxSquat, 'lift: box squat, chains: ten-millimetre, bands: red loop, from'],
  );
  for (const [from, to] of changes) {
    if (!text.includes(from)) throw new Error(`not in the scenario: ${from}`);
    text = text.replace(from, () => to);
  }
  return text;
}
