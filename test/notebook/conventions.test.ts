import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readScenario } from '../../src/notebook/readScenario.ts';

interface Wording {
  readonly convention: 'flexion' | 'included';
  readonly length: (centimetres: number) => string;
  readonly mass: (kilograms: number) => string;
  readonly torqueUnit: string;
  readonly torque: (newtonMetres: number) => number;
  readonly angle: (flexionDeg: number) => string;
  readonly time: (seconds: number) => string;
}

// By definition: 1 in = 2.54 cm, 1 lb = 0.45359237 kg, 1 lbf ft = 0.45359237 kg x 9.80665 m/s2 x
// 0.3048 m.
const pound = 0.45359237;
const poundFoot = pound * 9.80665 * 0.3048;

const metric: Wording = {
  convention: 'flexion',
  length: (centimetres) => `${centimetres} cm`,
  mass: (kilograms) => `${kilograms} kg`,
  torqueUnit: 'N m',
  torque: (newtonMetres) => newtonMetres,
  angle: (flexionDeg) => `${flexionDeg} deg`,
  time: (seconds) => `${seconds} s`,
};
const metres: Wording = { ...metric, length: (centimetres) => `${centimetres / 100} m` };
const radians: Wording = { ...metric, angle: (deg) => `${(deg / 180) * Math.PI} rad` };
const included: Wording = {
  ...metric,
  convention: 'included',
  angle: (flexionDeg) => `${180 - flexionDeg} °`,
};
const imperial: Wording = {
  ...included,
  length: (centimetres) => `${centimetres / 2.54} in`,
  mass: (kilograms) => `${kilograms / pound} lb`,
  torqueUnit: 'lbf ft',
  torque: (newtonMetres) => newtonMetres / poundFoot,
  time: (seconds) => `${seconds / 60} min`,
};

interface Numbers {
  readonly stature: number;
  readonly mass: number;
  readonly torque: number;
  readonly angles: readonly [number, number];
  readonly hip: number;
  readonly rest: number;
}

function write(numbers: Numbers, say: Wording): string {
  const [near, far] = numbers.angles;
  const [from, to] = [say.angle(near), say.angle(far)];
  return `title: The same person in other words
angles: ${say.convention}
athlete:
  code: AB
  reference: male
  stature: ${say.length(numbers.stature)}
  mass: ${say.mass(numbers.mass)}
  training: 2 years
  limits: { ankle dorsiflexion: 30 deg, knee flexion: 130 deg }
tests:
  - action: knee extension
    contraction: isometric
    with: { hip: ${say.angle(numbers.hip)}, ankle: 10 deg }
    trials: { ${from}: [${say.torque(numbers.torque)}], ${to}: [${say.torque(90)}] }
    unit: ${say.torqueUnit}
target: { action: knee extension, from: ${from}, to: ${to} }
machines:
  m: { load: ${say.mass(40)}, torque: { ${from}: ${say.torque(70)} ${say.torqueUnit}, ${to}: ${say.torque(80)} ${say.torqueUnit} } }
programs:
  p:
    weeks: 8
    sessions per week: 2
    work:
      - { lift: back squat, from: ${from}, to: ${to}, load: ${say.mass(70)}, sets: 3, reps: 5, rest: ${say.time(numbers.rest)} }
      - { hold: knee extension, at: ${to}, effort: 90 %, sets: 3, reps: 5, seconds: 5 }
`;
}

/** Numbers of a scenario in order, without what must differ: paths, convention, units as written. */
async function numbersOf(text: string): Promise<readonly (number | string)[]> {
  const { scenario, problems } = await readScenario('f.yaml', text);
  expect(problems).toBeUndefined();
  const leaves: (number | string)[] = [];
  JSON.stringify(scenario, (key, value: unknown) => {
    if (['path', 'convention', 'measure'].includes(key)) return undefined;
    if (typeof value === 'number' || typeof value === 'string') leaves.push(value);
    return value;
  });
  return leaves;
}

const tenths = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((value) => value / 10);

const numbers: fc.Arbitrary<Numbers> = fc.record({
  stature: tenths(140, 210),
  mass: tenths(40, 150),
  torque: tenths(20, 400),
  angles: fc.tuple(tenths(0, 60), tenths(61, 125)),
  hip: tenths(0, 110),
  rest: fc.integer({ min: 10, max: 600 }),
});

test.each<[string, Wording]>([
  ['metres', metres],
  ['radians', radians],
  ['included angles', included],
  ['inches, pounds, pound feet, minutes and included angles', imperial],
])('%s give the same scenario', async (_, wording) => {
  await fc.assert(
    fc.asyncProperty(numbers, async (values) => {
      const plain = await numbersOf(write(values, metric));
      const other = await numbersOf(write(values, wording));
      expect(other.length).toBe(plain.length);
      for (const [index, value] of plain.entries()) {
        const same = other[index];
        if (typeof value === 'string' || typeof same === 'string') expect(same).toBe(value);
        else expect(Math.abs(Number(same) - value)).toBeLessThan(1e-12 * Math.max(1, value));
      }
    }),
    { numRuns: 60 },
  );
});

test('an included range may be written in either order', async () => {
  const values = {
    stature: 180,
    mass: 80,
    torque: 200,
    angles: [10, 90],
    hip: 80,
    rest: 90,
  } as const;
  const text = write(values, included);
  const swapped = text.replaceAll('from: 170 °, to: 90 °', 'from: 90 °, to: 170 °');
  expect(swapped).not.toBe(text);
  expect(await numbersOf(swapped)).toEqual(await numbersOf(text));
});
