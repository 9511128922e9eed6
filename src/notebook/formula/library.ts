import type { FormulaFunction } from './compile.ts';
import { dimensionText, type Exponents, isSame, plain, raised } from './dimensions.ts';
import {
  entrywise,
  FormulaError,
  type NumberType,
  number,
  type Value,
  type ValueType,
} from './values.ts';

/**
 * Functions of numbers and lists that formulas may call: mathematics and statistics. What belongs
 * to the athlete and the programs is added by the pipeline.
 */
export interface DescribedFunction extends FormulaFunction {
  /**
   * Arguments as a coach writes them, what comes back, and one example that a test runs; its value
   * where that does not rest on the model.
   */
  readonly takes: string;
  readonly gives: string;
  readonly example: { readonly formula: string; readonly gives?: string };
}

const angle: Exponents = [0, 0, 0, 1];
const example = (formula: string, gives: string) => ({ formula, gives });

/** The arguments as numbers. @throws FormulaError if there are too few, too many, or none */
function numbers(name: string, args: readonly ValueType[], least: number, most = least) {
  if (args.length < least || args.length > most) {
    const wanted = least === most ? `${least}` : `${least} to ${most}`;
    throw new FormulaError(`calls ${name} with ${args.length} values; it takes ${wanted}`);
  }
  return args.map((type): NumberType => {
    if (type.kind === 'number') return type;
    throw new FormulaError(`gives a ${type.kind === 'text' ? 'text' : 'yes or no'} to ${name}`);
  });
}

function mustBe(name: string, type: NumberType, exponents: Exponents): void {
  if (isSame(type.exponents, exponents)) return;
  const [has, wants] = [dimensionText(type.exponents), dimensionText(exponents)];
  throw new FormulaError(`gives ${name} a ${has}; it takes a ${wants}`);
}

function allAlike(name: string, types: readonly NumberType[]): Exponents {
  const [first] = types;
  for (const type of types) if (first) mustBe(name, type, first.exponents);
  return first?.exponents ?? plain;
}

/** A function of one number, entry by entry. */
function single(
  name: string,
  gives: string,
  f: (x: number) => number,
  dimensions: {
    readonly from?: Exponents;
    readonly to: (from: Exponents) => Exponents;
  },
  shown: DescribedFunction['example'],
): DescribedFunction {
  return {
    name,
    takes: 'x',
    gives,
    example: shown,
    typeOf: (args) => {
      const [type] = numbers(name, args, 1) as [NumberType];
      if (dimensions.from) mustBe(name, type, dimensions.from);
      return number(dimensions.to(type.exponents), type.isVector);
    },
    run: (args) => entrywise(f, args),
  };
}

const kept = { to: (from: Exponents) => from };
const pure = { from: plain, to: () => plain };

/** A statistic of one list, or of several numbers alike. */
function statistic(
  name: string,
  gives: string,
  f: (values: readonly number[]) => number,
  shown: DescribedFunction['example'],
  to: (from: Exponents) => Exponents = (from) => from,
): DescribedFunction {
  return {
    name,
    takes: 'list, or numbers',
    gives,
    example: shown,
    typeOf: (args) => number(to(allAlike(name, numbers(name, args, 1, 100)))),
    run: (args) => f(args.flat() as number[]),
  };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const mean = (values: readonly number[]) => sum(values) / values.length;

/** Standard deviation of a sample: the sum of squares over n − 1. */
function deviation(values: readonly number[]): number {
  if (values.length < 2)
    throw new FormulaError('asks for the spread of one value', 'sd takes two values or more');
  const centre = mean(values);
  return Math.sqrt(sum(values.map((value) => (value - centre) ** 2)) / (values.length - 1));
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  const [low = 0, high = 0] = [sorted[Math.ceil(middle) - 1], sorted[Math.floor(middle)]];
  return (low + high) / 2;
}

const rounding: DescribedFunction = {
  name: 'round',
  takes: 'x, step',
  gives: 'x to the nearest multiple of a step (default 1; halves away from zero)',
  example: example('round(83.2 kg, 2.5 kg)', '82.5 kg'),
  typeOf: (args) => {
    const [x, step] = numbers('round', args, 1, 2) as [NumberType, NumberType | undefined];
    mustBe('round', step ?? number(plain), x.exponents);
    return number(x.exponents, x.isVector);
  },
  run: ([x, step = 1]) =>
    entrywise(
      (value) =>
        Math.sign(value) * Math.round(Math.abs(value) / (step as number)) * (step as number),
      [x as Value],
    ),
};

const interpolation: DescribedFunction = {
  name: 'interpolate',
  takes: 'list of x, list of y, x',
  gives: 'y at x by straight lines between points, held at the ends; x must rise',
  example: example('interpolate([0, 10, 20], [1 kg, 2 kg, 4 kg], 15)', '3 kg'),
  typeOf: (args) => {
    const [xs, ys, x] = numbers('interpolate', args, 3) as [NumberType, NumberType, NumberType];
    mustBe('interpolate', x, xs.exponents);
    if (!xs.isVector || !ys.isVector) throw new FormulaError('gives interpolate no lists');
    return number(ys.exponents, x.isVector);
  },
  run: ([xs, ys, x]) => {
    const [at, values] = [xs as readonly number[], ys as readonly number[]];
    const rises = at.every((value, i) => i === 0 || value > (at[i - 1] ?? value));
    if (at.length !== values.length || !rises)
      throw new FormulaError(
        'gives interpolate lists that do not match',
        'both lists of one length, the first rising',
      );
    return entrywise((value) => between(at, values, value), [x as Value]);
  },
};

function between(at: readonly number[], values: readonly number[], x: number): number {
  const next = at.findIndex((knot) => knot >= x);
  if (next === -1) return values.at(-1) ?? Number.NaN;
  if (next === 0) return values[0] ?? Number.NaN;
  const [left, right] = [at[next - 1] ?? 0, at[next] ?? 0];
  const share = (x - left) / (right - left);
  return (1 - share) * (values[next - 1] ?? 0) + share * (values[next] ?? 0);
}

const toAngle = { from: plain, to: () => angle };
const fromAngle = { from: angle, to: () => plain };

/** Mathematics and statistics, in the order of the printed table. */
export const library: readonly DescribedFunction[] = [
  single('abs', 'x without its sign', Math.abs, kept, example('abs(-3 kg)', '3 kg')),
  rounding,
  single('floor', 'the whole number below', Math.floor, pure, example('floor(2.7)', '2')),
  single('ceil', 'the whole number above', Math.ceil, pure, example('ceil(2.1)', '3')),
  single(
    'sqrt',
    'square root',
    Math.sqrt,
    { to: (from) => raised(from, 0.5) },
    example('sqrt(16 m^2)', '4 m'),
  ),
  single('exp', 'e to the power x', Math.exp, pure, example('exp(0)', '1')),
  single('ln', 'natural logarithm', Math.log, pure, example('ln(exp(2))', '2')),
  single('log10', 'logarithm to base 10', Math.log10, pure, example('log10(1000)', '3')),
  single('sin', 'sine of an angle', Math.sin, fromAngle, example('sin(30 deg)', '0.5')),
  single('cos', 'cosine of an angle', Math.cos, fromAngle, example('cos(60 deg)', '0.5')),
  single('tan', 'tangent of an angle', Math.tan, fromAngle, example('tan(45 deg)', '1')),
  single('asin', 'angle with this sine', Math.asin, toAngle, example('asin(0.5)', '30 deg')),
  single('acos', 'angle with this cosine', Math.acos, toAngle, example('acos(0.5)', '60 deg')),
  single('atan', 'angle with this tangent', Math.atan, toAngle, example('atan(1)', '45 deg')),
  statistic('min', 'the smallest', (v) => Math.min(...v), example('min(3, 1, 2)', '1')),
  statistic('max', 'the largest', (v) => Math.max(...v), example('max([3, 1, 2])', '3')),
  statistic('sum', 'all together', sum, example('sum(1:4)', '10')),
  statistic('mean', 'the mean', mean, example('mean(118 N m, 122 N m)', '120 N m')),
  statistic('median', 'the middle value', median, example('median(1, 9, 2)', '2')),
  statistic(
    'sd',
    'standard deviation of a sample (n − 1)',
    deviation,
    example('sd(2, 4, 4, 4, 5, 5, 7, 9)', '2.14'),
  ),
  statistic(
    'count',
    'how many',
    (v) => v.length,
    example('count(1:4)', '4'),
    () => plain,
  ),
  interpolation,
];
