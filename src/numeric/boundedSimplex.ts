/**
 * A simplex tableau: basic + Σ line·other = side in each row, every variable from 0 to its limit and
 * those outside the basis at 0. The basis may hold artificial variables, numbered from the number of
 * columns; they have no column, for they never return.
 */
export interface Tableau {
  /** One entry a column, the basic ones included. */
  readonly lines: number[][];
  readonly side: number[];
  /** Number of the basic variable of each row. */
  readonly basis: number[];
  /** One a variable, artificial ones included; may be Infinity. */
  readonly limits: number[];
  /** Variables replaced by what they lack of their limit. */
  readonly flipped: boolean[];
}

/** Entries smaller than this, of a tableau whose entries start at 1 or less, are rounding. */
const negligible = 1e-11;

/** Value of a variable, within its bounds whatever the rounding. */
export function valueAt({ basis, side, flipped, limits }: Tableau, variable: number): number {
  const row = basis.indexOf(variable);
  const limit = limits[variable] as number;
  const value = row < 0 ? 0 : Math.min(limit, Math.max(0, side[row] as number));
  return flipped[variable] ? limit - value : value;
}

/**
 * Raises Σ worth·variable as far as it goes, by the bounded simplex method (Dantzig 1955, Econometrica
 * 23:174) with Bland's rule against cycling (Bland 1977, Math. Oper. Res. 2:103).
 *
 * @param tableau changed in place
 * @param worth by number of the variable; 0 for those with a finite limit above 0, which may be flipped
 * @returns false if it rises without end
 */
export function climb(tableau: Tableau, worth: (variable: number) => number): boolean {
  const { lines, limits } = tableau;
  for (let pivots = 0; pivots < 10_000; pivots++) {
    const entering = enteringColumn(tableau, worth);
    if (entering < 0) return true;
    const leaving = leavingRow(tableau, entering);
    if (leaving < 0 && limits[entering] === Infinity) return false;
    if (leaving < 0) flipOutside(tableau, entering);
    else {
      if ((lines[leaving]?.[entering] as number) < 0) flipBasic(tableau, leaving);
      pivot(tableau, leaving, entering);
    }
  }
  throw new Error('the simplex method did not end');
}

/** Bland's rule: the first variable outside the basis that gains; -1 if none does. */
function enteringColumn({ lines, basis, flipped }: Tableau, worth: (variable: number) => number) {
  const worths = basis.map(worth);
  for (let j = 0; j < flipped.length; j++) {
    if (basis.includes(j)) continue;
    let gain = worth(j);
    for (let r = 0; r < worths.length; r++)
      if (worths[r] !== 0) gain -= (worths[r] as number) * (lines[r]?.[j] as number);
    if (gain > negligible) return j;
  }
  return -1;
}

/** Row whose variable first meets a bound as the entering one rises; -1 if that one's limit is first. */
function leavingRow({ lines, side, basis, limits }: Tableau, entering: number): number {
  let step = limits[entering] as number;
  let leaving = -1;
  for (let r = 0; r < lines.length; r++) {
    const entry = lines[r]?.[entering] as number;
    if (Math.abs(entry) <= negligible) continue;
    const held = side[r] as number;
    const room = entry > 0 ? held : (limits[basis[r] as number] as number) - held;
    const reach = Math.max(0, room) / Math.abs(entry);
    const first = leaving < 0 || (basis[r] as number) < (basis[leaving] as number);
    if (reach < step || (reach === step && reach < Infinity && leaving >= 0 && first)) {
      step = reach;
      leaving = r;
    }
  }
  return leaving;
}

/** Replaces a variable outside the basis, at its limit, by what it lacks of it. */
function flipOutside({ lines, side, limits, flipped }: Tableau, column: number): void {
  const limit = limits[column] as number;
  lines.forEach((line, r) => {
    (side[r] as number) -= limit * (line[column] as number);
    line[column] = -(line[column] as number);
  });
  flipped[column] = !flipped[column];
}

/** Replaces a basic variable by what it lacks of its limit. */
function flipBasic({ lines, side, basis, limits, flipped }: Tableau, row: number): void {
  const variable = basis[row] as number;
  lines[row] = (lines[row] as number[]).map((entry, j) => (j === variable ? entry : -entry));
  side[row] = (limits[variable] as number) - (side[row] as number);
  if (variable < flipped.length) flipped[variable] = !flipped[variable];
}

/** Puts the variable of a column into the basis in place of that of a row. */
function pivot({ lines, side, basis }: Tableau, row: number, column: number): void {
  const line = lines[row] as number[];
  const entry = line[column] as number;
  for (let j = 0; j < line.length; j++) (line[j] as number) /= entry;
  line[column] = 1;
  (side[row] as number) /= entry;
  for (let r = 0; r < lines.length; r++) {
    const other = lines[r] as number[];
    const share = other[column] as number;
    if (r === row || share === 0) continue;
    for (let j = 0; j < line.length; j++) (other[j] as number) -= share * (line[j] as number);
    other[column] = 0;
    (side[r] as number) -= share * (side[row] as number);
  }
  basis[row] = column;
}
