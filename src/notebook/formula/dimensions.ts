/**
 * Physical dimensions of formula values: exponents of mass, length, time and angle. Angles count as
 * a dimension of their own, so that degrees and plain numbers are not mixed up unnoticed.
 */
export type Exponents = readonly [mass: number, length: number, time: number, angle: number];

export const plain: Exponents = [0, 0, 0, 0];

export function isSame(a: Exponents, b: Exponents): boolean {
  // Roots leave thirds: compare as far as rounding allows.
  return a.every((exponent, i) => Math.abs(exponent - (b[i] ?? 0)) < 1e-9);
}

export function combined(a: Exponents, b: Exponents, sign: 1 | -1): Exponents {
  return a.map((exponent, i) => exponent + sign * (b[i] ?? 0)) as unknown as Exponents;
}

export function raised(a: Exponents, power: number): Exponents {
  return a.map((exponent) => exponent * power) as unknown as Exponents;
}

/** A unit that a formula may write behind a number: its dimension and size in SI. */
export interface FormulaUnit {
  readonly exponents: Exponents;
  readonly size: number;
}

const [mass, length, time, angle]: readonly Exponents[] = [
  [1, 0, 0, 0],
  [0, 1, 0, 0],
  [0, 0, 1, 0],
  [0, 0, 0, 1],
] as const;
const force: Exponents = [1, 1, -2, 0];
const [pound, foot, gravity] = [0.45359237, 0.3048, 9.80665];

/** Seconds; a year is 365.25 days. */
export const day = 86400;
export const year = 365.25 * day;

/**
 * Units of formulas. Sizes are exact by definition: pound and foot by the international agreement
 * of 1959, weight units by standard gravity (CGPM 1901), a year as 365.25 days.
 */
export const formulaUnits: ReadonlyMap<string, FormulaUnit> = new Map([
  ...units(mass, { kg: 1, g: 0.001, lb: pound, lbs: pound }),
  ...units(length, { m: 1, cm: 0.01, mm: 0.001, ft: foot, inch: foot / 12 }),
  ...units(time, {
    s: 1,
    ms: 0.001,
    min: 60,
    h: 3600,
    day,
    days: day,
    week: 7 * day,
    weeks: 7 * day,
  }),
  ...units(time, { year, years: year }),
  ...units(angle, { deg: Math.PI / 180, rad: 1 }),
  ...units(force, { N: 1, kN: 1000, kgf: gravity, lbf: pound * gravity }),
  ...units([1, 2, -2, 0], { J: 1, Nm: 1 }),
  ...units([1, 2, -3, 0], { W: 1 }),
]);

function units(
  exponents: Exponents | undefined,
  sizes: Readonly<Record<string, number>>,
): [string, FormulaUnit][] {
  return Object.entries(sizes).map(([name, size]) => [
    name,
    { exponents: exponents ?? plain, size },
  ]);
}

/** Dimensions with a word of their own, and the unit they are shown in. */
const known: readonly {
  readonly word: string;
  readonly unit: string;
  readonly exponents: Exponents;
}[] = [
  { word: 'number', unit: '', exponents: plain },
  { word: 'mass', unit: 'kg', exponents: [1, 0, 0, 0] },
  { word: 'length', unit: 'm', exponents: [0, 1, 0, 0] },
  { word: 'time', unit: 's', exponents: [0, 0, 1, 0] },
  { word: 'angle', unit: 'deg', exponents: [0, 0, 0, 1] },
  { word: 'force', unit: 'N', exponents: force },
  { word: 'torque', unit: 'N m', exponents: [1, 2, -2, 0] },
  { word: 'torque per body mass', unit: 'N m/kg', exponents: [0, 2, -2, 0] },
  { word: 'power', unit: 'W', exponents: [1, 2, -3, 0] },
  { word: 'speed', unit: 'm/s', exponents: [0, 1, -1, 0] },
  { word: 'angular speed', unit: 'deg/s', exponents: [0, 0, -1, 1] },
  { word: 'acceleration', unit: 'm/s^2', exponents: [0, 1, -2, 0] },
  { word: 'area', unit: 'm^2', exponents: [0, 2, 0, 0] },
];

/** "torque (N m)", "number": a dimension as messages name it. */
export function dimensionText(exponents: Exponents): string {
  const named = known.find((entry) => isSame(entry.exponents, exponents));
  if (named) return named.unit === '' ? named.word : `${named.word} (${named.unit})`;
  return `quantity (${unitText(exponents)})`;
}

/** The unit a value of a dimension is shown in if nothing else is asked, and its size in SI. */
export function usualUnit(exponents: Exponents): { readonly text: string; readonly size: number } {
  const text = unitText(exponents);
  return { text, size: text.startsWith('deg') ? Math.PI / 180 : 1 };
}

/** "N m", "kg m^3". */
function unitText(exponents: Exponents): string {
  const named = known.find((entry) => isSame(entry.exponents, exponents));
  if (named) return named.unit;
  const symbols = ['kg', 'm', 's', 'rad'];
  const parts = exponents.flatMap((exponent, i) => {
    if (Math.abs(exponent) < 1e-9) return [];
    const power = Number(exponent.toFixed(3));
    return [power === 1 ? `${symbols[i]}` : `${symbols[i]}^${power}`];
  });
  return parts.join(' ');
}
