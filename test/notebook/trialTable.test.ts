import { describe, expect, it, test } from 'vitest';
import { around, readWith, saidOf } from './tested.ts';

const entry = (more: string, columns = '{ angle: Angle, value: Torque }') =>
  around(
    `  - { action: knee extension, contraction: isometric, unit: N m, trials from: tests/a.csv, columns: ${columns}${more} }`,
  );

/** Angles in degrees and trials of each test, as read. */
async function trialsOf(text: string, csv: string) {
  const { tests } = await readWith(text, { 'tests/a.csv': csv });
  return tests.map((one) =>
    one.kind === 'torque'
      ? {
          ...(one.date === undefined ? {} : { date: one.date }),
          points: one.points.map(({ angle, trials }) => [
            Math.round((angle * 180) / Math.PI),
            ...trials,
          ]),
        }
      : one,
  );
}

const long = 'Angle,Torque\n60,163\n40,112\n40,118\n60,158\n80,171\n80,170\n';
const grouped = [
  [40, 112, 118],
  [60, 163, 158],
  [80, 171, 170],
];

describe('a table of trials beside the scenario', () => {
  it('one trial a line, in any order, is put together by angle', async () => {
    expect(await trialsOf(entry(''), long)).toEqual([{ points: grouped }]);
  });

  it.each<[string, string, string]>([
    ['CRLF, byte order mark and empty lines', '', `\ufeff${long.replaceAll('\n', '\r\n')}\r\n\r\n`],
    ['quotes', '', long.replace('60,163', '"60","163"').replace('Angle,', '"Angle",')],
    ['blanks around cells', '', long.replaceAll(',', ' , ')],
    ['tabs, found', '', long.replaceAll(',', '\t')],
    ['semicolons, found', '', long.replaceAll(',', ';')],
    ['semicolons, told', ', separator: semicolon', long.replaceAll(',', ';')],
    [
      'quoted separators in other columns',
      '',
      long
        .replaceAll(/\n(?=\d)/g, '\n')
        .replace('Angle,Torque', 'Angle,Torque,Note')
        .replaceAll(/^(\d+,\d+)$/gm, '$1,"a, ""b"""'),
    ],
    ['empty cells at the end', '', long.replaceAll(/^(.*\d)$/gm, '$1,,')],
  ])('%s change nothing', async (_, more, csv) => {
    expect(await trialsOf(entry(more), csv)).toEqual([{ points: grouped }]);
  });

  it('several trials a line, an empty cell for one not done', async () => {
    const text = entry('', '{ angle: Angle, values: [T1, T2, T3] }');
    const csv = 'Angle,T1,T2,T3\n40,112,,118\n60,163,158,166\n';
    expect(await trialsOf(text, csv)).toEqual([
      {
        points: [
          [40, 112, 118],
          [60, 163, 158, 166],
        ],
      },
    ]);
  });

  it('decimal commas if told, with semicolons or in quotes', async () => {
    const text = entry(', decimal: comma');
    expect(await trialsOf(text, 'Angle;Torque\n40;112,5\n40;118\n')).toEqual([
      { points: [[40, 112.5, 118]] },
    ]);
    expect(await trialsOf(text, 'Angle,Torque\n40,"112,5"\n40,118\n')).toEqual([
      { points: [[40, 112.5, 118]] },
    ]);
  });

  it('only the lines asked for, of a squad', async () => {
    const csv =
      'Athlete;Side;Angle;Torque\nSN-04;left;40;112\nSN-05;left;40;99\nSN-04;right;40;120\nSN-04;left;60;160\n';
    const text = entry(', where: { Athlete: SN-04, Side: left }');
    expect(await trialsOf(text, csv)).toEqual([
      {
        points: [
          [40, 112],
          [60, 160],
        ],
      },
    ]);
  });

  it('a test for each day, and its own way to count angles', async () => {
    const csv = 'Date,Angle,Torque\n2026-09-14,140,112\n2026-09-17,140,118\n2026-09-14,120,160\n';
    const text = entry(', angles: included', '{ angle: Angle, value: Torque, day: Date }');
    expect(await trialsOf(text, csv)).toEqual([
      {
        date: '2026-09-14',
        points: [
          [40, 112],
          [60, 160],
        ],
      },
      { date: '2026-09-17', points: [[40, 118]] },
    ]);
  });

  it('says which table it is from', async () => {
    const { tests } = await readWith(entry(''), { 'tests/a.csv': long });
    expect(tests[0]).toMatchObject({ table: 'tests/a.csv', measure: { unit: 'N m' } });
  });
});

describe('what is wrong with a table is told at its line', () => {
  test.each<[name: string, csv: string, said: string[]]>([
    [
      'a decimal comma in a table with points',
      'Angle;Torque\n40;112\n60;163,5\n',
      [
        'tests/a.csv:3 [163,5] Torque is "163,5", with a decimal comma; this table is read with decimal points | write decimal: comma in the test if the whole table has them',
      ],
    ],
    [
      'a decimal comma that parts cells',
      'Angle,Torque\n40,112\n60,163,5\n',
      [
        'tests/a.csv:3 [6] this line has 3 cells, the first line 2 | a decimal comma parts cells too: save the table with semicolons, or put such numbers in quotes',
      ],
    ],
    [
      'a sign between thousands',
      'Angle;Torque\n40;1 112\n60;1,234.5\n',
      [
        'tests/a.csv:2 [1 112] Torque is "1 112", with a sign between thousands | write numbers without it, such as 1234.5',
        'tests/a.csv:3 [1,234.5] Torque is "1,234.5", with a sign between thousands | write numbers without it, such as 1234.5',
      ],
    ],
    [
      'a unit in a cell, a word, a torque below 0',
      'Angle;Torque\n40;112 Nm\n60;n/a\n80;-12\n',
      [
        'tests/a.csv:2 [112 Nm] Torque is "112 Nm"; a cell holds a number alone | write the unit once, in the test, and only the number in the table',
        'tests/a.csv:3 [n/a] Torque is "n/a"; a trial is a number | leave the cell empty for a trial that was not done',
        'tests/a.csv:4 [-12] Torque is -12; a torque is above 0',
      ],
    ],
    [
      'a trial without its angle',
      'Angle;Torque\n40;112\n;163\n',
      ['tests/a.csv:3 [;] Angle is empty; an angle is a number | fill it in, or delete the line'],
    ],
    [
      'an angle no knee has',
      'Angle;Torque\n40;112\n170;163\n',
      [
        'tests/a.csv:3 [170] 170 deg of knee flexion is more than a knee bends; is this an included angle (180 = straight)? then write angles: included',
      ],
    ],
    [
      'an angle at which strength is not known',
      'Angle;Torque\n40;112\n145;163\n',
      [
        'tests/a.csv:3 [145] Angle is 145 deg of knee flexion; strength in knee extension is known from 0 to 140 deg | write an angle within that; the knee counts from 0 deg (straight), flexion positive',
      ],
    ],
    [
      'no names in the first line',
      '40,112\n60,163\n',
      [
        'tests/a.csv:1 [4] the first line of this table holds numbers; it must hold the names of the columns | add a first line such as "Angle,Trial 1,Trial 2"',
      ],
    ],
    [
      'another name in the first line',
      'Angel,Torque\n40,112\n',
      ['f.yaml:5 [Angle] tests/a.csv has no column "Angle" | did you mean "Angel"?'],
    ],
    [
      'a name twice',
      'Angle,Torque,Torque\n40,112,118\n',
      [
        'f.yaml:5 [Torque] tests/a.csv has two columns "Torque" | give each its own name in the first line of the table',
      ],
    ],
    [
      'a quote that is not closed',
      'Angle,Torque\n40,"112\n',
      [
        'tests/a.csv:2 [4] a quote that opens here is never closed | write a quote inside quotes twice: ""',
      ],
    ],
    [
      'a quote inside a cell',
      'Angle,Torque\n40,1"12\n',
      [
        'tests/a.csv:2 [4] there is a quote in the middle of a cell | write a quote inside quotes twice: ""',
      ],
    ],
    ['nothing', '', ['tests/a.csv:1 [] this table is empty']],
    [
      'no trials',
      'Angle,Torque\n40,\n',
      ['f.yaml:5 [tests/a.csv] tests/a.csv holds no trials: their cells are empty'],
    ],
    [
      'no lines',
      'Angle,Torque\n',
      ['f.yaml:5 [tests/a.csv] tests/a.csv has no line below its first'],
    ],
    [
      'more than a joint makes',
      'Angle,Torque\n40,1120\n',
      ['tests/a.csv:2 [1120] 1120 N m is more than a joint makes; is the unit right?'],
    ],
    [
      'too long',
      `Angle,Torque\n${'40,112\n'.repeat(80_000)}`,
      [
        'tests/a.csv:1 [A] this table has 560013 characters; at most 500000 are read | keep the lines of this athlete, or split it by season',
      ],
    ],
    [
      'too many lines',
      `Angle,Torque\n${'40,112\n'.repeat(5000)}`,
      ['tests/a.csv:1 [A] this table has 5001 lines; at most 5000 are read'],
    ],
  ])('%s', async (_, csv, said) => {
    expect(await saidOf(entry(''), { 'tests/a.csv': csv })).toEqual(said);
  });

  test.each<[name: string, text: string, said: string[]]>([
    [
      'no such file',
      entry('').replace('a.csv', 'b.csv'),
      ['f.yaml:5 [tests/b.csv] there is no file tests/b.csv'],
    ],
    [
      'no columns',
      entry('').replace(', columns: { angle: Angle, value: Torque }', ''),
      [
        'f.yaml:5 [{] tests.1.columns is missing; it says which column of the table holds what | add for example "columns: { angle: Angle, value: Torque }"',
      ],
    ],
    [
      'no column of trials',
      entry('', '{ angle: Angle }'),
      [
        'f.yaml:5 [columns] columns names no trials: neither value nor values | write value: Torque for one trial a line, or values: [Trial 1, Trial 2] for several',
      ],
    ],
    [
      'both kinds of column',
      entry('', '{ angle: Angle, value: Torque, values: [Torque] }'),
      [
        'f.yaml:5 [columns] columns has both value and values | write value: Torque for one trial a line, or values: [Trial 1, Trial 2] for several',
      ],
    ],
    [
      'no line of the athlete',
      entry(', where: { Torque: SN-04 }'),
      [
        'f.yaml:5 [{ Torque: SN-04 }] tests/a.csv has no line with Torque "SN-04" | Torque holds 163, 112, 118, 158, 171, 170',
      ],
    ],
    [
      'a column to choose by that is not there',
      entry(', where: { Athlete: SN-04 }'),
      ['f.yaml:5 [Athlete] tests/a.csv has no column "Athlete" | its columns: Angle, Torque'],
    ],
    [
      'trials in both places',
      entry(', trials: { 40 deg: [112, 114] }'),
      [
        'f.yaml:5 [trials from] trials from stands beside trials; trials come from one place | delete one',
      ],
    ],
    [
      'no trials at all',
      around('  - { action: knee extension, contraction: isometric, unit: N m }'),
      [
        'f.yaml:5 [{] tests.1.trials is missing | add for example "trials: { 40 deg: [118, 121, 116] }", or "trials from: tests/sn04.csv"',
      ],
    ],
    [
      'how a table is read, without one',
      around(
        '  - { action: knee extension, contraction: isometric, unit: N m, trials: { 40 deg: [112, 114] }, decimal: comma }',
      ),
      [
        'f.yaml:5 [decimal] decimal tells how a table is read, but there is no trials from | delete decimal, or add "trials from: tests/sn04.csv"',
      ],
    ],
  ])('in the scenario: %s', async (_, text, said) => {
    expect(await saidOf(text, { 'tests/a.csv': long })).toEqual(said);
  });

  it('a trial twice, a day that is no date, a date beside a column of days', async () => {
    const columns = '{ angle: Angle, value: Torque, trial: Trial, day: Date }';
    const csv = 'Date,Trial,Angle,Torque\n14.9.2026,1,40,112\n14.9.2026,1,40,118\n';
    const text = entry(', date: 2026-09-14', columns);
    expect(await saidOf(text, { 'tests/a.csv': csv })).toEqual([
      'f.yaml:5 [date] date stands beside a column of days; the table dates its trials | delete date',
      'tests/a.csv:2 [14.9.2026] the day is "14.9.2026"; days are written year-month-day | write it as in 2026-09-14',
      'tests/a.csv:3 [40] trial 1 of this angle stands in the table twice | delete one line; or name the columns of person and day, or choose with where:',
    ]);
  });
});
