/** Torque of one side at an angle, N·m, before and after a program. */
export interface TorquePoint {
  readonly deg: number;
  readonly before: number;
  readonly after: number;
}

export interface TorqueRow extends TorquePoint {
  readonly isTested: boolean;
  /** Of the two as printed, so that the row adds up for its reader. */
  readonly difference: number;
  readonly digits: number;
}

/** Degrees between the rows of the table, as between the bands of the other tables. */
const rowsEvery = 25;

/** A row of those is left out this near to one that is wanted for itself, degrees. */
const near = 10;

/**
 * Which points of two curves stand in a table: where the action was tested, for there a retest will
 * be held against them, at the ends of the target, and between them every 25 degrees from the first.
 * An angle between two points stands at the nearer one, which is shown.
 */
export function torqueRows(
  points: readonly TorquePoint[],
  testedDeg: readonly number[],
  targetDeg: readonly number[],
): TorqueRow[] {
  const onPoint = (angles: readonly number[]) => angles.map((deg) => nearest(points, deg));
  const tested = onPoint(testedDeg);
  const wanted = [...tested, ...onPoint(targetDeg)];
  const first = points[0]?.deg ?? 0;
  const isBetween = (deg: number) =>
    (deg - first) % rowsEvery === 0 && wanted.every((other) => Math.abs(other - deg) > near);
  return points
    .filter(({ deg }) => wanted.includes(deg) || isBetween(deg))
    .map((point) => rowOf(point, tested.includes(point.deg)));
}

function rowOf(point: TorquePoint, isTested: boolean): TorqueRow {
  const { before, after } = point;
  // As newton metres are printed: whole, one decimal below 10.
  const digits = before < 9.95 ? 1 : 0;
  const difference = Number(after.toFixed(digits)) - Number(before.toFixed(digits));
  return { ...point, isTested, difference, digits };
}

function nearest(points: readonly TorquePoint[], deg: number): number {
  const away = points.map((point) => Math.abs(point.deg - deg));
  return points[away.indexOf(Math.min(...away))]?.deg ?? Number.NaN;
}
