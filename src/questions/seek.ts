import type { CellResult } from '../notebook/formula/evaluateCells.ts';
import { placeInText } from '../notebook/placeInText.ts';
import type { Source } from '../notebook/source.ts';
import { type Bracket, narrowed, secant } from '../numeric/rootFinding.ts';
import { Memory } from '../stages/memory.ts';
import { numberThenUnit, stepAt, withValues } from './sweep.ts';

/** A value at which a formula meets its goal. */
export interface Solution {
  readonly value: string;
  readonly answer: CellResult;
}

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
  /** Values of the range that the file cannot have, with the first reason. */
  readonly refused: { readonly count: number; readonly says?: string };
}

/** Values looked at before solutions are closed in on: two closer than a step apart may be missed. */
const looked = 13;
/** Part of a step to which a solution is found, and most evaluations spent on it. */
const finest = 1e-4;
const mostCloser = 14;
/** Part of the change over a step that may be left; more is a jump over the goal. */
const mostLeft = 0.01;

interface Point extends Solution {
  readonly x: number;
  /** Formula less goal, SI. */
  readonly y: number;
}

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
  const found = placeInText(source, place);
  if (!found.place) return { fault: found.fault };
  const { path, written } = found.place;
  const ends = range.split(':').map((part) => numberThenUnit.exec(part));
  const [from, to] = ends;
  const unit = from?.[2] ?? '';
  if (ends.length !== 2 || !from || !to || to[2] !== unit || !(Number(from[1]) < Number(to[1])))
    return { fault: `range is "${range}"; write from : to in one unit, such as 60 kg : 120 kg` };
  const [first, last] = [Number(from[1]), Number(to[1])];
  const memory = new Memory();
  let [refused, says]: [number, string | undefined] = [0, undefined];
  const at = async (x: number): Promise<Point | undefined> => {
    const value = `${Number(x.toPrecision(8))} ${unit}`.trim();
    const changed = withValues(source, [[path, value]]);
    const step = await stepAt(changed, value, [formula, goal], memory);
    const [answer, wanted] = step.answers;
    if (!answer || typeof answer.value !== 'number' || typeof wanted?.value !== 'number') {
      refused++;
      says ??= step.says ?? 'the formula or the goal is not a number';
      return undefined;
    }
    return { x, value, answer, y: answer.value - wanted.value };
  };
  const points: (Point | undefined)[] = [];
  for (let i = 0; i < looked; i++)
    points.push(await at(first + ((last - first) * i) / (looked - 1)));
  const solutions: Solution[] = [];
  const jumps: [Solution, Solution][] = [];
  for (const [i, right] of points.entries()) {
    const left = points[i - 1];
    if (right?.y === 0) solutions.push(right);
    else if (left && right && left.y !== 0 && left.y * right.y < 0) {
      const { best, before, after } = await closeIn(left, right, at);
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
      refused: { count: refused, ...(says === undefined ? {} : { says }) },
    },
  };
}

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
  let best = Math.abs(left.y) < Math.abs(right.y) ? left : right;
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
