import { cellText } from '../notebook/formula/cellText.ts';
import type { Difference } from '../notebook/text/differences.ts';
import type { Change, Pair } from '../questions/changes.ts';
import type { Block, Report } from './report.ts';
import { listInWords, plural, signedPercent, signedPoints } from './words.ts';

/** Most places listed after one save. */
const mostPlaces = 12;

/** What one save of a file changed: the places, and of the answer only what moved. No headings. */
export function changePage(change: Change): Report {
  const { differences } = change;
  const shown = differences.slice(0, mostPlaces).map(placeText);
  const left = differences.length - shown.length;
  const items = left > 0 ? [...shown, `and ${plural(left, 'more place')}`] : shown;
  const answer = answerBlocks(change);
  if (items.length === 0 && !isAnswerMoved(change))
    return unheaded([{ kind: 'text', text: 'No value changed.' }]);
  return unheaded([...(items.length > 0 ? [{ kind: 'list', items } as const] : []), ...answer]);
}

/** Blocks without a heading over them. */
export const unheaded = (blocks: readonly Block[]): Report => ({
  title: '',
  sections: [{ heading: '', blocks }],
});

function placeText({ place, a, b }: Difference): string {
  const where = place || 'the whole file';
  if (!b) return `${where}: taken out (was ${a?.text ?? 'empty'})`;
  const home = b.file === undefined ? '' : ` of ${b.file}`;
  return `${where}: ${a ? `${a.text} → ` : 'new, '}${b.text} (line ${b.line}${home})`;
}

/** The best program before and now, then every other number that moved as far as it is shown. */
export function answerBlocks(change: Change): Block[] {
  if (!isAnswerMoved(change)) return [{ kind: 'text', text: 'Nothing that counts changed.' }];
  const items = [
    ...shortItems(change),
    ...programMoves(change),
    ...tieMoves(change),
    ...cellMoves(change),
  ];
  return [
    { kind: 'text', text: bestText(change) },
    ...(items.length > 0 ? [{ kind: 'list', items } as const] : []),
  ];
}

function isAnswerMoved(change: Change): boolean {
  const { a, b } = change;
  const moved = [...programMoves(change), ...tieMoves(change), ...cellMoves(change)];
  return (
    a.program !== b.program ||
    signedPoints(b.gain - a.gain) !== '0' ||
    moved.length > 0 ||
    change.short.length > 0
  );
}

function bestText({ a, b, programs }: Change): string {
  const name = `"${b.program}"`;
  if (a.program === b.program)
    return programs.length === 1
      ? `The target gain of ${name} ${goes(a.gain, b.gain)}.`
      : `${name} is still the best program; its target gain ${goes(a.gain, b.gain)}.`;
  const tie = b.ties.includes(a.program) ? '; the two cannot be told apart' : '';
  return `The best program was "${a.program}" (${signedPercent(a.gain)}); now it is ${name} (${signedPercent(b.gain)})${tie}.`;
}

function goes(a: number, b: number): string {
  const [before, now, points] = [signedPercent(a), signedPercent(b), signedPoints(b - a)];
  if (points === '0') return `stays at ${now}`;
  return before === now
    ? `stays at about ${now} (${points} points)`
    : `goes from ${before} to ${now} (${points} points)`;
}

const shortItems = ({ short }: Change) =>
  short.map((name) => `${name}: cannot be done as written; its gain is that of what can be done`);

/** Gains and places of the programs but the best, whose gain is told before. */
function programMoves({ a, b, programs, places }: Change): string[] {
  return programs.flatMap(({ name, ...gain }, i) => {
    if (gain.b === undefined) return [`${name}: taken out`];
    if (gain.a === undefined)
      return [`${name}: new, ${signedPercent(gain.b)}, place ${places[i]?.b ?? ''}`];
    const isTold = name === b.program && name === a.program;
    const moved = !isTold && signedPoints(gain.b - gain.a) !== '0';
    const place = placeMove(places[i]);
    if (!moved && place === '') return [];
    return [`${name}: ${goes(gain.a, gain.b)}${place}`];
  });
}

const placeMove = (place?: Pair<number>) =>
  place?.a === undefined || place.b === undefined || place.a === place.b
    ? ''
    : `, place ${place.a} → ${place.b}`;

/** Programs that are told apart from the best now and were not before, and the other way round. */
function tieMoves({ a, b, programs }: Change): string[] {
  const inBoth = programs.flatMap((one) =>
    one.a === undefined || one.b === undefined ? [] : [one.name],
  );
  const only = (some: readonly string[], others: readonly string[]) =>
    inBoth.filter((name) => some.includes(name) && !others.includes(name));
  const joined = only(b.ties, a.ties).filter((name) => name !== b.program);
  const left = only(a.ties, b.ties);
  return [
    ...(joined.length > 0
      ? [`now not to be told apart from the best: ${listInWords(joined)}`]
      : []),
    ...(left.length > 0 ? [`now clearly behind the best: ${listInWords(left)}`] : []),
  ];
}

function cellMoves({ cells }: Change): string[] {
  return cells.flatMap(({ name, a, b }) => {
    const [before, now] = [a && cellText(a), b && cellText(b)];
    if (before === now) return [];
    if (now === undefined) return [`cell ${name}: taken out`];
    return [`cell ${name}: ${before === undefined ? 'new, ' : `${before} → `}${now}`];
  });
}
