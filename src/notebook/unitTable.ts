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

/** Spelling in the file → mathjs's spelling, or a plain factor for what is not a physical unit. */
const spellings: Readonly<Record<Dimension, Readonly<Record<string, string | number>>>> = {
  angle: { deg: 'deg', '°': 'deg', rad: 'rad' },
  speed: { 'deg/s': 'deg/s', '°/s': 'deg/s', 'rad/s': 'rad/s' },
  length: { m: 'm', cm: 'cm', mm: 'mm', in: 'in', ft: 'ft' },
  mass: { kg: 'kg', lb: 'lb', lbs: 'lb', g: 'g' },
  torque: {
    'N m': 'N m',
    'N*m': 'N m',
    Nm: 'N m',
    N·m: 'N m',
    'lbf ft': 'lbf ft',
    'ft lbf': 'lbf ft',
    ft·lbf: 'lbf ft',
    'ft-lbf': 'lbf ft',
    'lb ft': 'lbf ft',
    'ft lb': 'lbf ft',
    'ft lbs': 'lbf ft',
    'ft-lb': 'lbf ft',
    'ft-lbs': 'lbf ft',
    ft·lb: 'lbf ft',
    'foot pound': 'lbf ft',
    'foot pounds': 'lbf ft',
    'foot-pounds': 'lbf ft',
    'kgf cm': 'kgf cm',
  },
  force: { N: 'N', kN: 'kN', kgf: 'kgf', lbf: 'lbf' },
  'mass per length': {
    'kg/m': 'kg/m',
    'kg per m': 'kg/m',
    'kg per metre': 'kg/m',
    'lb/ft': 'lb/ft',
    'lbs/ft': 'lb/ft',
  },
  time: { s: 's', min: 'minute' },
  weeks: { week: 1, weeks: 1 },
  years: { year: 1, years: 1 },
  share: { '%': 0.01 },
};

const siUnit: Readonly<Partial<Record<Dimension, string>>> = {
  angle: 'rad',
  speed: 'rad/s',
  length: 'm',
  mass: 'kg',
  torque: 'N m',
  force: 'N',
  'mass per length': 'kg/m',
  time: 's',
};

let loaded: Promise<UnitTable> | undefined;

/**
 * Gives the units that a file may use, with mathjs's factors to SI.
 *
 * mathjs takes longer to load than everything else together, so it is loaded on the first call;
 * later calls share the table.
 *
 * @returns spelling → unit; rejects only if the installation is broken
 */
export function loadUnitTable(): Promise<UnitTable> {
  loaded ??= buildUnitTable();
  return loaded;
}

async function buildUnitTable(): Promise<UnitTable> {
  const { default: singleFile } = await import('mathjs/lib/browser/math.js');
  const math = singleFile.create();
  const table = new Map<string, Unit>();
  for (const dimension of dimensions) {
    const si = siUnit[dimension];
    for (const [spelling, meaning] of Object.entries(spellings[dimension])) {
      const factor =
        typeof meaning === 'number' || si === undefined
          ? Number(meaning)
          : math.unit(1, meaning).toNumber(si);
      table.set(spelling, { dimension, toSi: scaling(factor) });
    }
  }
  return table;
}

/** Dividing by 100 rounds once where multiplying by 0.01 rounds twice: 57 cm is 0.57 m exactly. */
function scaling(factor: number): (value: number) => number {
  const inverse = Math.round(1 / factor);
  const isWholeDivisor = Math.abs(inverse * factor - 1) < 1e-15 && inverse > 1;
  return isWholeDivisor ? (value) => value / inverse : (value) => value * factor;
}

const dimensions: readonly Dimension[] = [
  'angle',
  'speed',
  'length',
  'mass',
  'torque',
  'force',
  'mass per length',
  'time',
  'weeks',
  'years',
  'share',
];
