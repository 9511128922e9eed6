import type { Source } from '../notebook/text/source.ts';
import { minimumSteps } from '../numeric/minimum.ts';
import {
  looked,
  lookOver,
  openSearch,
  type Point,
  type Refused,
  type Search,
  type Solution,
} from './openSearch.ts';

/** A value at which a formula is lower (or higher) than at all values near it. */
export interface Extreme extends Solution {
  /**
   * Where it lies: between higher values, at an end of the range, at the last value that the file
   * can have, at a jump, or along a stretch over which the formula stays the same.
   */
  readonly lies: 'inside' | 'end' | 'edge' | 'jump' | 'level';
  /** The value just across the jump, or the other end of the level. */
  readonly other?: Solution;
}

/** The goals that are no value. */
export type ExtremeGoal = 'least' | 'most';

export interface SoughtExtreme {
  readonly place: string;
  readonly formula: string;
  readonly goal: ExtremeGoal;
  /** All that were found, the lowest (or highest) first; none if the formula never changes. */
  readonly extremes: readonly Extreme[];
  /** What the formula is, if it never changes. */
  readonly always?: Solution;
  readonly refused: Refused;
}

/** Part of a step to which a place is found; values are shown to three digits. */
const finest = 1e-3;
/** Most evaluations spent on one place. */
const mostCloser = 30;
/** Part of a formula's size that counts as no change: loads are found to some 1e-6 kg. */
const noChange = 1e-6;
/** Part of the whole change that is a jump over so short a way as `finest`. */
const isJump = 0.01;

/** What closing in needs: the search, how far apart looked-at values are, and the scale of changes. */
interface Closing extends Pick<Search, 'at'> {
  readonly fine: number;
  /** 1 for a least value, -1 for a most. */
  readonly sign: 1 | -1;
  /** Differences up to this are none. */
  readonly slack: number;
  readonly span: number;
}

/** Points in order, none where the file refuses the value or the range has ended. */
type Row = readonly (Point | undefined)[];

/**
 * Finds the values of one place of a file at which a formula is least or most: looks at values over
 * the range, then closes in around every local extreme among them. The file is not touched.
 * Left out: an extreme narrower than a step of the looked-at values.
 *
 * @param range "60 kg : 120 kg"
 */
export async function seekExtreme(
  source: Source,
  place: string,
  range: string,
  formula: string,
  goal: ExtremeGoal,
): Promise<{ readonly sought: SoughtExtreme } | { readonly fault: string }> {
  const opened = openSearch(source, place, range, [formula]);
  if ('fault' in opened) return opened;
  const { search } = opened;
  const sign = goal === 'least' ? 1 : -1;
  const seen = await lookOver(search);
  const slack = noChange * Math.max(...heights(seen).map(Math.abs));
  const row = search.isWhole ? seen : await betweenEquals(seen, search.at, slack);
  const span = Math.max(...heights(row)) - Math.min(...heights(row));
  const [start] = row.filter((point) => point !== undefined);
  const extremes: Extreme[] = [];
  const fine = (finest * (search.last - search.first)) / (looked - 1);
  const closing = { at: search.at, fine, sign, slack, span } as const;
  const found = { place, formula, goal };
  if (start && span <= slack)
    return { sought: { ...found, extremes, always: start, refused: search.refused() } };
  for (const [first, last] of lowRuns(row, closing))
    extremes.push(
      search.isWhole ? counted(row, first, last) : await settled(row, first, last, closing),
    );
  const size = ({ answer }: Extreme) => sign * Number(answer.value);
  const sorted = extremes
    .map((extreme) => withoutRemainder(extreme, noChange * span))
    .sort((a, b) => size(a) - size(b));
  return { sought: { ...found, extremes: sorted, refused: search.refused() } };
}

const heights = (row: Row) => row.flatMap((point) => (point ? [point.y] : []));

/** The row with a value tried between neighbours that are equal: there may be a turn between them. */
async function betweenEquals(row: Row, at: Search['at'], slack: number): Promise<Row> {
  const fuller: (Point | undefined)[] = [];
  for (const [i, point] of row.entries()) {
    const before = row[i - 1];
    if (before && point && Math.abs(point.y - before.y) <= slack)
      fuller.push(await at((before.x + point.x) / 2));
    fuller.push(point);
  }
  return fuller;
}

/** First and last place of each run of equal points that has nothing lower beside it. */
function lowRuns(row: Row, { sign, slack }: Closing): [first: number, last: number][] {
  const runs: [number, number][] = [];
  const isHigher = (one: Point | undefined, than: Point) =>
    one === undefined || sign * (one.y - than.y) > slack;
  for (let first = 0; first < row.length; first++) {
    const point = row[first];
    if (!point || !isHigher(row[first - 1], point)) continue;
    let last = first;
    const isEqual = (one: Point | undefined) => one && Math.abs(one.y - point.y) <= slack;
    while (isEqual(row[last + 1])) last++;
    if (isHigher(row[last + 1], point)) runs.push([first, last]);
  }
  return runs;
}

/** The extreme at a run of low points where there is nothing between them. */
function counted(row: Row, first: number, last: number): Extreme {
  const [low, other] = [row[first], row[last]];
  if (!low || !other) throw new Error('a run of points that are not there');
  if (first !== last) return { ...low, lies: 'level', other };
  return { ...low, lies: first === 0 || last === row.length - 1 ? 'end' : 'inside' };
}

/** The extreme at a run of low points, closed in on if it is a single one. */
async function settled(row: Row, first: number, last: number, closing: Closing): Promise<Extreme> {
  const [low, other] = [row[first], row[last]];
  if (!low || !other) throw new Error('a run of points that are not there');
  if (first !== last) return { ...low, lies: 'level', other };
  const [before, after] = [row[first - 1], row[first + 1]];
  if (before && after) return inside(before, low, after, closing);
  const neighbour = before ?? after;
  const isEnd = before ? first === row.length - 1 : first === 0;
  if (!neighbour) return { ...low, lies: 'edge' };
  if (isEnd) return atEnd(low, neighbour, 'end', closing);
  const edge = await lastThatCanBe(low, 2 * low.x - neighbour.x, closing);
  return closing.sign * (edge.y - low.y) > 0
    ? inside(neighbour, low, edge, closing)
    : atEnd(edge, edge === low ? neighbour : low, 'edge', closing);
}

/** Halves the way from a value that can be to one that cannot; gives the last that can. */
async function lastThatCanBe(from: Point, toX: number, { at, fine }: Closing): Promise<Point> {
  let [good, badX] = [from, toX];
  while (Math.abs(badX - good.x) > fine) {
    const x = (good.x + badX) / 2;
    const point = await at(x);
    if (point) good = point;
    else badX = x;
  }
  return good;
}

/** The lowest point at an end, unless it goes lower still a little inward. */
async function atEnd(
  end: Point,
  inner: Point,
  lies: 'end' | 'edge',
  closing: Closing,
): Promise<Extreme> {
  const { at, fine, sign, slack } = closing;
  const x = end.x + Math.sign(inner.x - end.x) * fine;
  const near = Math.abs(inner.x - end.x) > 2 * fine ? await at(x) : undefined;
  return near && sign * (near.y - end.y) < -slack
    ? inside(end, near, inner, closing)
    : { ...end, lies };
}

/** Closes in between two higher points; a jump shows as a far higher point right beside the lowest. */
async function inside(
  one: Point,
  low: Point,
  another: Point,
  { at, fine, sign, span }: Closing,
): Promise<Extreme> {
  const [a, b] = one.x < another.x ? [one, another] : [another, one];
  const tried = new Map([a, low, b].map((point) => [point.x, point]));
  const from = { a: a.x, fa: sign * a.y, x: low.x, fx: sign * low.y, b: b.x, fb: sign * b.y };
  const steps = minimumSteps(from, fine);
  let step = steps.next();
  for (let i = 0; !step.done && i < mostCloser; i++) {
    const point = await at(step.value);
    if (!point) break;
    tried.set(point.x, point);
    step = steps.next(sign * point.y);
  }
  const known = [...tried.values()];
  const best = known.reduce((x, y) => (sign * (y.y - x.y) < 0 ? y : x), low);
  const beside = known.filter(({ x }) => x !== best.x && Math.abs(x - best.x) <= 4 * fine);
  const across = beside.find(({ y }) => sign * (y - best.y) > isJump * span);
  if (across) return { ...best, lies: 'jump', other: across };
  return { ...best, lies: step.done ? 'inside' : 'edge' };
}

/** What is nothing beside the change over the whole range, as a plain 0. */
const withoutRemainder = (extreme: Extreme, nothing: number): Extreme =>
  Math.abs(Number(extreme.answer.value)) <= nothing
    ? { ...extreme, answer: { ...extreme.answer, value: 0 } }
    : extreme;
