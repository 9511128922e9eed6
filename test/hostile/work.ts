import { body, hold, many, plain, program, type Row, squat, swapped } from './parts.ts';

export const numbers: readonly Row[] = [
  '1e999',
  '.inf',
  '-.inf',
  '.nan',
  '0x7fffffff',
  '0o17777777777',
  '1e15',
  '-1',
  '0',
  '0.5',
  '1_000_000',
  '99999999999999999999',
  '5e-324',
].flatMap((value): Row[] => [
  [`sets of ${value}`, 'compute without end', () => swapped('sets: 4', `sets: ${value}`)],
  [`repetitions of ${value}`, 'compute without end', () => swapped('reps: 5', `reps: ${value}`)],
  [`weeks of ${value}`, 'compute without end', () => swapped('weeks: 8', `weeks: ${value}`)],
  [`sessions of ${value}`, 'compute without end', () => swapped('week: 2', `week: ${value}`)],
  [`mass of ${value}`, 'a body that cannot be', () => swapped('65 kg', `${value} kg`)],
  [`seconds of ${value}`, 'a hold without end', () => swapped('seconds: 5', `seconds: ${value}`)],
  [`best of ${value}`, 'a single that cannot be', () => swapped('80 kg', `${value} kg`)],
  [`angle of ${value}`, 'an angle that cannot be', () => swapped('at: 90 deg', `at: ${value} deg`)],
  [
    `within ${value}`,
    'a target without end',
    () => swapped('to: 100 deg }', `to: 100 deg, within: ${value} weeks }`),
  ],
  [
    `tempo of ${value}`,
    'a repetition without end',
    () => swapped(hold, squat.replace('3-0-1', `${value}-0-1`)),
  ],
  [`rest of ${value}`, 'a rest without end', () => swapped('rest: 90 s', `rest: ${value} s`)],
  [
    `minutes of ${value}`,
    'a week without end',
    () => `${plain}limits: { minutes per week: ${value} }\n`,
  ],
]);

export const work: readonly Row[] = [
  [
    'a thousand programs',
    'a program a millisecond',
    () => `${body}programs:\n${many(1000, (i) => program(`p${i}`))}`,
  ],
  [
    'hundreds of long programs',
    'two years of squats each',
    () =>
      `${body}programs:\n${many(400, (i) => program(`p${i}`, [squat.replace('115', `${90 + (i % 30)}`)], 104, 14))}`,
  ],
  [
    'as many lifts as are computed',
    'compute as long as it may',
    () =>
      `${body}programs:\n${program(
        'a',
        Array.from({ length: 60 }, (_, i) => squat.replace('115', `${80 + i / 2}`)),
      )}`,
  ],
  [
    'a hundred different squats',
    'a search for each',
    () =>
      `${body}programs:\n${program(
        'a',
        Array.from({ length: 100 }, (_, i) => squat.replace('115', `${80 + i / 4}`)),
      )}`,
  ],
  [
    'ten thousand exercises',
    'one program without end',
    () => `${body}programs:\n${program('a', Array(10_000).fill(hold))}`,
  ],
  [
    'as many exercises as are read',
    'one program as long as is read',
    () => `${body}programs:\n${program('a', Array(2_300).fill(hold), 104, 14)}`,
  ],
  [
    'many squats in a program',
    'many lifts over two years',
    () => `${body}programs:\n${program('a', Array(1_500).fill(squat), 104, 14)}`,
  ],
  [
    'programs like a long one',
    'grow by copies',
    () =>
      `${body}programs:\n${program('a', Array(100).fill(squat), 104)}${many(2_000, (i) => `  b${i}: { like: a, change: { weeks: ${1 + (i % 100)} } }\n`)}`,
  ],
  [
    'chain of like',
    'copy a copy a thousand times',
    () =>
      `${plain}${many(3_000, (i) => `  p${i}: { like: ${i === 0 ? 'holds' : `p${i - 1}`} }\n`)}`,
  ],
  [
    'chain of like backwards',
    'overflow the stack by copies',
    () =>
      `${body}programs:\n${many(6_000, (i) => `  p${i}: { like: p${i + 1} }\n`)}${program('p6000')}`,
  ],
  [
    'chain of like with changes',
    'remember every change',
    () =>
      `${plain}${many(1_500, (i) => `  p${i}: { like: ${i === 0 ? 'holds' : `p${i - 1}`}, change: { work.1.x${i}: 1 } }\n`)}`,
  ],
  [
    'circle of like',
    'copy without end',
    () => `${body}programs:\n${many(5_000, (i) => `  p${i}: { like: p${(i + 1) % 5_000} }\n`)}`,
  ],
  ['like itself', 'copy itself', () => `${plain}  b: { like: b }\n`],
  [
    'change to a far place',
    'a list with a billion holes',
    () =>
      `${plain}  b: { like: holds, change: { work.1000000000.sets: 3, work.1000000000: 1, work.-1: 1, work.1e9: 2 } }\n`,
  ],
  [
    'change many steps',
    'a place without end',
    () => `${plain}  b: { like: holds, change: { ${'work.1.'.repeat(100_000)}sets: 3 } }\n`,
  ],
  [
    'thousands of changes',
    'costly changes',
    () => `${plain}  b: { like: holds, change: { ${many(6_000, (i) => `x${i}: 1, `)} } }\n`,
  ],
  [
    'thousands of deloads',
    'look up each week',
    () => `${plain}    deload: [${'{ week: 4, sets: half },'.repeat(4_000)}]\n`,
  ],
  [
    'thousands of phases',
    'train them all',
    () => `${plain}  b: { phases: [${'{ weeks: 1, off: yes },'.repeat(4_000)}] }\n`,
  ],
  [
    'phases of many lifts and years',
    'train them all',
    () =>
      `${plain}  b: { phases: [${many(200, () => `{ weeks: 104, sessions per week: 2, work: [{ lift: back squat, from: 0 deg, to: 110 deg, load: 80 %, sets: 4, reps: 6 }] }, `)}] }\n`,
  ],
  [
    'thousands of tests',
    'fit them all',
    () =>
      plain.replace(
        'tests:\n',
        () =>
          `tests:\n${many(3_000, (i) => `  - { lift: back squat, to: ${60 + i / 60} deg, best: 80 kg }\n`)}`,
      ),
  ],
  [
    'thousands of trials',
    'fit them all',
    () =>
      plain.replace(
        'tests:\n',
        () =>
          `tests:\n  - { action: knee extension, contraction: isometric, unit: N m, with: { hip: 85 deg }, trials: { ${many(4_000, (i) => `${20 + i / 50} deg: [150, 155], `)} } }\n`,
      ),
  ],
  [
    'thousands of machine torques',
    'a curve without end',
    () =>
      `${plain}machines: { m: { load: 40 kg, torque: { ${many(6_000, (i) => `${i / 50} deg: 70 N m, `)} } } }\n`,
  ],
  [
    'thousands of machines',
    'read them all',
    () =>
      `${plain}machines:\n${many(2_000, (i) => `  m${i}: { load: 40 kg, torque: { 10 deg: 70 N m, 60 deg: 80 N m } }\n`)}`,
  ],
];
