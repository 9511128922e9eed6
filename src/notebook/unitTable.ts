/** The kinds of quantity a scenario holds. Weeks and years are counts, not seconds. */
export type Dimension =
  | 'angle'
  | 'speed'
  | 'length'
  | 'mass'
  | 'torque'
  | 'force'
  | 'mass per length'
  | 'time'
  | 'weeks'
  | 'years'
  | 'share';

interface Unit {
  readonly dimension: Dimension;
  /** Turns a number in this unit into SI (weeks, years: into their count; shares: of one). */
  readonly toSi: (value: number) => number;
}

/** Every spelling of a unit that a file may use. */
export type UnitTable = ReadonlyMap<string, Unit>;

/**
 * SI sizes of units, exact by definition: pound and foot by the international agreement of 1959,
 * weight units by standard gravity (CGPM 1901).
 */
export const unitSizes = {
  deg: Math.PI / 180,
  foot: 0.3048,
  inch: 0.0254,
  pound: 0.45359237,
  gravity: 9.80665,
} as const;
const { deg, foot, inch, pound, gravity } = unitSizes;
const footPound = foot * pound * gravity;
const inchPound = inch * pound * gravity;

/** Spellings in the file and their size in SI (weeks, years: in themselves; shares: of one). */
const spellings: Readonly<Record<Dimension, Readonly<Record<string, number>>>> = {
  angle: { deg, '°': deg, rad: 1 },
  speed: { 'deg/s': deg, '°/s': deg, 'rad/s': 1 },
  length: { m: 1, cm: 0.01, mm: 0.001, in: inch, ft: foot },
  mass: { kg: 1, lb: pound, lbs: pound, g: 0.001 },
  torque: {
    ...all(['N m', 'N*m', 'Nm', 'N·m'], 1),
    ...all(['lbf ft', 'ft lbf', 'ft·lbf', 'ft-lbf', 'lb ft', 'ft lb', 'ft lbs'], footPound),
    ...all(['ft-lb', 'ft-lbs', 'ft·lb', 'foot pound', 'foot pounds', 'foot-pounds'], footPound),
    ...all(
      ['lbf in', 'in lbf', 'in·lbf', 'in-lbf', 'in-lb', 'in-lbs', 'in lb', 'lb in'],
      inchPound,
    ),
    'kgf cm': gravity / 100,
    'kgf m': gravity,
  },
  force: { N: 1, kN: 1000, kgf: gravity, lbf: pound * gravity },
  'mass per length': {
    ...all(['kg/m', 'kg per m', 'kg per metre'], 1),
    ...all(['lb/ft', 'lbs/ft'], pound / foot),
  },
  time: { s: 1, min: 60 },
  weeks: { week: 1, weeks: 1 },
  years: { year: 1, years: 1 },
  share: { '%': 0.01 },
};

function all(names: readonly string[], size: number): Readonly<Record<string, number>> {
  return Object.fromEntries(names.map((name) => [name, size]));
}

/** The units that a file may use: spelling → unit. */
export const unitTable: UnitTable = new Map(
  Object.entries(spellings).flatMap(([dimension, sizes]) =>
    Object.entries(sizes).map(([spelling, size]): [string, Unit] => [
      spelling,
      { dimension: dimension as Dimension, toSi: scaling(size) },
    ]),
  ),
);

/** Dividing by 100 rounds once where multiplying by 0.01 rounds twice: 57 cm is 0.57 m exactly. */
function scaling(size: number): (value: number) => number {
  const inverse = Math.round(1 / size);
  const isWholeDivisor = Math.abs(inverse * size - 1) < 1e-15 && inverse > 1;
  return isWholeDivisor ? (value) => value / inverse : (value) => value * size;
}
