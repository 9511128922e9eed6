import type { Source } from '../notebook/text/source.ts';
import { type Bracket, narrowed, secant } from '../numeric/rootFinding.ts';
import { lookOver, openSearch, type Point, type Refused, type Solution } from './openSearch.ts';

export interface Sought {
  readonly place: string;
  readonly written: string;
  readonly formula: string;
  readonly goal: string;
  readonly solutions: readonly Solution[];
  /** Neighbouring values between which the formula passes its goal without meeting it. */
  readonly jumps: readonly (readonly [before: Solution, after: Solution])[];
  /** Smallest and largest of what was found on the way, by value; for when there is no solution. */
  readonly least?: Solution;
  readonly most?: Solution;
  readonly refused: Refused;
}

/** Part of a step to which a solution is found, and most evaluations spent on it. */
const finest = 1e-4;
const mostCloser = 14;
/** Part of the change over a step that may be left; more is a jump over the goal. */
const mostLeft = 0.01;

/**
 * Finds the values of one place of a file at which a formula equals a goal: looks at some values over
 * the range, then closes in wherever the difference changes its sign. The file is not
 * touched.
 *
 * @param range "60 kg : 120 kg"
 * @param goal a formula of the same kind, "80 kg"
 * @returns every solution found, none included, or what is wrong
 */
export async function seek(
  source: Source,
  place: string,
  range: string,
  formula: string,
  goal: string,
): Promise<{ readonly sought: Sought } | { readonly fault: string }> {
  const opened = openSearch(source, place, range, [formula, goal]);
  if ('fault' in opened) return opened;
  const { at, isWhole, written, refused } = opened.search;
  const points = await lookOver(opened.search);
  const solutions: Solution[] = [];
  const jumps: [Solution, Solution][] = [];
  for (const [i, right] of points.entries()) {
    const left = points[i - 1];
    if (right?.y === 0) solutions.push(right);
    else if (left && right && left.y !== 0 && left.y * right.y < 0) {
      const { best, before, after } = isWhole
        ? { best: nearer(left, right), before: left, after: right }
        : await closeIn(left, right, at);
      const isMet = Math.abs(best.y) <= mostLeft * Math.abs(right.y - left.y);
      if (isMet) solutions.push(best);
      else jumps.push([before, after]);
    }
  }
  const known = points.filter((point) => point !== undefined);
  const [start] = known;
  const extreme = (sign: 1 | -1) =>
    start && known.reduce((a, b) => (sign * b.y > sign * a.y ? b : a), start);
  const [least, most] = [extreme(-1), extreme(1)];
  return {
    sought: {
      place,
      written,
      formula,
      goal,
      solutions,
      jumps,
      ...(least ? { least } : {}),
      ...(most ? { most } : {}),
      refused: refused(),
    },
  };
}

const nearer = (a: Point, b: Point) => (Math.abs(a.y) < Math.abs(b.y) ? a : b);

/**
 * Closes in on a change of sign, with the same steps as `risingRoot`, which cannot wait for an
 * evaluation: a nearly straight answer takes two or three.
 *
 * @returns the nearest point, and the last ones before and after the goal
 */
async function closeIn(
  left: Point,
  right: Point,
  at: (x: number) => Promise<Point | undefined>,
): Promise<Readonly<Record<'best' | 'before' | 'after', Point>>> {
  const fine = finest * (right.x - left.x);
  let bracket: Bracket = { a: left.x, fa: left.y, b: right.x, fb: right.y };
  let [before, after] = [left, right];
  let best = nearer(left, right);
  for (let i = 0; i < mostCloser; i++) {
    const point = await at(secant(bracket));
    if (!point) break;
    const moved = Math.abs(point.x - best.x);
    if (Math.abs(point.y) < Math.abs(best.y)) best = point;
    if (point.y === 0 || moved < fine) break;
    bracket = narrowed(bracket, point.x, point.y);
    if (point.y * left.y > 0) before = point;
    else after = point;
  }
  return { best, before, after };
}
