import { describe, expect, it, test } from 'vitest';
import { readScenario } from '../../src/notebook/readScenario.ts';
import { told } from './told.ts';

/** A published study in a scenario. The study, its people and its numbers are invented. */
const file = `title: Holds, eight weeks
angles: flexion
group: { name: men, reference: male, stature: 178 cm, mass: 78 kg, training: 0 years }
target: { action: knee extension, from: 75 deg, to: 100 deg }
programs:
  long holds:
    weeks: 8
    sessions per week: 3
    work:
      - { hold: knee extension, at: 90 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5 }
study:
  cited: { authors: A and B, year: 2020, journal: J, pages: "1:1–9", doi: 10.1/x }
  known: read
  groups:
    long holds:
      people: 12
      assumed: [The rest is not known.]
      left out: [Activity rose.]
      observed:
        - { isometric: knee extension, at: 90 deg, change: 12 %, sd: 9 %, source: abstract }
`;

const outcome = 'isometric: knee extension, at: 90 deg, change: 12 %, sd: 9 %, source: abstract';

function changed(from: string, to: string): string {
  if (!file.includes(from)) throw new Error(`not in the file: ${from}`);
  return file.replace(from, () => to);
}

async function studyOf(text: string) {
  const { scenario, problems } = await readScenario('f.yaml', text);
  expect(problems).toBeUndefined();
  return scenario?.study;
}

async function first(written: string, more: (text: string) => string = (text) => text) {
  const study = await studyOf(more(changed(outcome, written)));
  const [observed] = study?.groups[0]?.observed ?? [];
  if (!observed) throw new Error('nothing was read');
  const { path: _, ...rest } = observed;
  return rest;
}

const deg = Math.PI / 180;
const near = (value: number) => expect.closeTo(value, 12);

describe('what is read', () => {
  it('citation, people, sentences', async () => {
    expect(await studyOf(file)).toMatchObject({
      cited: { authors: 'A and B', year: 2020, journal: 'J', pages: '1:1–9', known: 'read' },
      known: 'read',
      groups: [
        {
          program: 'long holds',
          people: 12,
          assumed: ['The rest is not known.'],
          leftOut: ['Activity rose.'],
        },
      ],
    });
  });

  it('a file without a study has none', async () => {
    expect(await studyOf(file.slice(0, file.indexOf('study:')))).toBeUndefined();
  });

  // Shares by hundredths, degrees by pi/180 (hand calculation).
  test.each<[string, object]>([
    [
      outcome,
      {
        outcome: {
          kind: 'isometric',
          of: 'knee extension',
          from: near(90 * deg),
          to: near(90 * deg),
        },
        found: { kind: 'size', change: near(0.12), spread: { kind: 'sd', value: near(0.09) } },
        source: 'abstract',
        isForFit: true,
      },
    ],
    [
      'isometric: leg press, from: 60 deg, to: 90 deg, change: -2.2 %, se: 4.3 %, source: meta-analysis, doubt: One leg., fit: no',
      {
        outcome: { kind: 'isometric', of: 'leg press', from: near(60 * deg), to: near(90 * deg) },
        found: { kind: 'size', change: near(-0.022), spread: { kind: 'se', value: near(0.043) } },
        source: 'meta-analysis',
        doubt: 'One leg.',
        isForFit: false,
      },
    ],
    [
      'single: back squat, from: 0 deg, to: 120 deg, change: 20 %, spread: unknown, source: table, after: 5 weeks',
      {
        outcome: { kind: 'single', of: 'back squat', from: 0, to: near(120 * deg) },
        found: { kind: 'size', change: near(0.2), spread: { kind: 'unknown' } },
        source: 'table',
        afterWeeks: 5,
        isForFit: true,
      },
    ],
    [
      'repetition maximum: bench press, reps: 6, from: -15 deg, to: 80 deg, change: 3 %, se: 3.6 %, source: figure',
      {
        outcome: {
          kind: 'repetition maximum',
          of: 'bench press',
          reps: 6,
          from: near(-15 * deg),
          to: near(80 * deg),
        },
        found: { kind: 'size', change: near(0.03), spread: { kind: 'se', value: near(0.036) } },
        source: 'figure',
        isForFit: true,
      },
    ],
    [
      'isokinetic: knee extension, speed: 60 deg/s, way: lowering, from: 5 deg, to: 30 deg, found: no clear change, source: abstract',
      {
        outcome: {
          kind: 'isokinetic',
          of: 'knee extension',
          speed: near(60 * deg),
          way: 'lowering',
          from: near(5 * deg),
          to: near(30 * deg),
        },
        found: { kind: 'direction', direction: 'no clear change' },
        source: 'abstract',
        isForFit: true,
      },
    ],
    [
      'isokinetic: knee extension, speed: unknown, way: lifting, change: 10 %, spread: unknown, source: abstract',
      {
        outcome: { kind: 'isokinetic', of: 'knee extension', way: 'lifting' },
        found: { kind: 'size', change: near(0.1), spread: { kind: 'unknown' } },
        source: 'abstract',
        isForFit: true,
      },
    ],
    [
      'growth: triceps, measure: volume, place: 50 %, change: 14 %, spread: unknown, source: abstract',
      {
        outcome: {
          kind: 'growth',
          of: 'triceps',
          muscles: ['triceps long head', 'triceps lateral head', 'triceps medial head'],
          measure: 'volume',
          place: near(0.5),
        },
        found: { kind: 'size', change: near(0.14), spread: { kind: 'unknown' } },
        source: 'abstract',
        isForFit: true,
      },
    ],
    [
      'fibres: vastus lateralis, region: distal, change: 5 %, sd: 2 %, source: abstract',
      {
        outcome: {
          kind: 'fibres',
          of: 'vastus lateralis',
          muscles: ['vastus lateralis'],
          region: 'distal',
        },
        found: { kind: 'size', change: near(0.05), spread: { kind: 'sd', value: near(0.02) } },
        source: 'abstract',
        isForFit: true,
      },
    ],
    [
      'optimum: knee flexion, change: -7 deg, spread: unknown, source: abstract',
      {
        outcome: { kind: 'optimum', of: 'knee flexion' },
        found: { kind: 'size', change: near(-7 * deg), spread: { kind: 'unknown' } },
        source: 'abstract',
        isForFit: true,
      },
    ],
    [
      'arm: soleus, change: 5.5 %, sd: 4 %, source: abstract',
      {
        outcome: { kind: 'arm', of: 'soleus', muscles: ['soleus'] },
        found: { kind: 'size', change: near(0.055), spread: { kind: 'sd', value: near(0.04) } },
        source: 'abstract',
        isForFit: true,
      },
    ],
  ])('%s', async (written, expected) => {
    expect(await first(written)).toEqual(expected);
  });

  it('included angles are turned round, the shift of an optimum is not', async () => {
    const included = (text: string) =>
      text
        .replace('angles: flexion', 'angles: included')
        .replace('from: 75 deg, to: 100 deg', 'from: 105 deg, to: 80 deg');
    const held = await first(outcome.replace('90 deg', '120 deg'), included);
    expect(held.outcome).toMatchObject({ from: near(60 * deg), to: near(60 * deg) });
    const moved = await first(
      'optimum: knee extension, change: 5 deg, spread: unknown, source: abstract',
      included,
    );
    expect(moved.found).toMatchObject({ change: near(5 * deg) });
  });
});

describe('what is refused', () => {
  const whole = (text: string) => `20 [{ ${text} }]`;
  const of = (from: string, to: string) => outcome.replace(from, to);
  test.each<[string, string]>([
    [
      of('12 %', '12'),
      '20 [12] study.groups.long holds.observed.1.change needs a percent sign, for example "12 %"',
    ],
    [of('12 %', '1200 %'), '20 [1200 %] change is 1200 %; a change lies between -90 % and 300 %'],
    [
      of(', sd: 9 %', ''),
      `${whole(of(', sd: 9 %', ''))} the change has no spread; write sd: or se: as in the source, or spread: unknown`,
    ],
    [
      of('sd: 9 %', 'sd: 9 %, se: 3 %'),
      '20 [se] se stands beside sd; a change has one spread | keep sd: or se:',
    ],
    [
      of('change', 'found: clear rise, change'),
      '20 [found] found stands beside change; a size says which way it went | delete found',
    ],
    [
      of('change: 12 %, ', ''),
      `${whole(of('change: 12 %, ', ''))} change is missing; write what was found | change: 12 %, or found: clear rise`,
    ],
    [
      of('change: 12 %, sd: 9 %', 'found: better'),
      '20 [better] found is "better"; there is no such finding | known: clear rise, no clear change, clear fall',
    ],
    [
      of('at: 90 deg, ', ''),
      `${whole(of('at: 90 deg, ', ''))} a hold is tested at an angle; write at:, or from: and to: for a mean over angles`,
    ],
    [
      of('at:', 'from: 60 deg, to: 80 deg, at:'),
      '20 [at] at stands beside from and to; a test is at one angle or a mean over a range | keep at:, or from: and to:',
    ],
    [
      of('at:', 'from:'),
      `${whole(of('at:', 'from:'))} to is missing; a mean over a range needs from and to`,
    ],
    [
      of('extension', 'extention'),
      '20 [knee extention] isometric is "knee extention"; there is no such joint action or lift | did you mean "knee extension"?',
    ],
    [
      of('isometric:', 'isometrc:'),
      `${whole(of('isometric:', 'isometrc:'))} observed.1 must be an outcome with "isometric:", "single:", "repetition maximum:", "isokinetic:", "growth:", "fibres:", "optimum:" or "arm:" | did you mean "isometric" instead of "isometrc"?`,
    ],
    [
      'growth: quadriceps, change: 20 %, sd: 3 %, source: abstract',
      '20 [{] study.groups.long holds.observed.1.measure is missing | add for example "measure: volume"',
    ],
    [
      'optimum: knee extension, change: 20 %, sd: 3 deg, source: abstract',
      '20 [20 %] change is an angle; "%" is a share — write it in deg or rad, for example "5 deg"',
    ],
    [
      'single: back squat, from: 120 deg, to: 0 deg, change: 20 %, sd: 3 %, source: abstract',
      '20 [120 deg] from is 120 deg and to is 0 deg; from must be the smaller one | write from: 0 deg, to: 120 deg',
    ],
    [
      'single: leg press, from: 5 deg, to: 130 deg, change: 20 %, sd: 3 %, source: abstract',
      '20 [130 deg] to is 130 deg of knee flexion; leg press runs from 5 to 105 deg',
    ],
  ])('%s', async (written, expected) => {
    expect(await told(changed(outcome, written))).toEqual([expected]);
  });

  it('groups and programs of other names', async () => {
    expect(
      await told(changed('    long holds:\n      people', '    long hold:\n      people')),
    ).toEqual([
      '6 [long holds] the study says nothing of "long holds"; its programs are what its groups did | add "long holds" to study.groups, or take the program out',
      '15 [long hold] study.groups has "long hold", but there is no such program | did you mean "long holds"?',
    ]);
  });

  it('a study beside one athlete', async () => {
    const problems = await told(changed('group: { name: men', 'athlete: { code: A'));
    expect(problems).toContain(
      '11 [study] study stands beside athlete; a study tells what groups of people gained | write group: with the mean person of the study instead of athlete:',
    );
  });

  it('values of the wrong shape', async () => {
    expect(await told(changed('year: 2020', 'year: twenty'))).toEqual([
      '12 [twenty] study.cited.year must be a year such as 2013',
    ]);
    expect(await told(changed('  known: read\n', ''))).toEqual([
      '11 [study] study.known is missing | add for example "known: read"',
    ]);
  });
});
