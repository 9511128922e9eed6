import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { startingScenario } from '../../src/notebook/startingScenario.ts';
import { toDegrees } from '../../src/numeric/degrees.ts';
import { fullReport, shortReport } from '../../src/page/fullReport.ts';
import { resultsJson } from '../../src/page/resultsJson.ts';
import { renderTerminal } from '../../src/page/terminal.ts';
import { run } from '../../src/run.ts';
import { predictStudy } from '../../src/stages/study/predictGroup.ts';
import { studyCase } from '../../src/stages/study/studyCase.ts';
import { coefficients } from '../../src/tables/adaptation.ts';
import { blocksUnder, resultsOf, tableUnder, textsUnder } from '../page/askReport.ts';

const heading = 'What the study found';

/** The study, its people and its numbers are invented. */
const invented = `title: Holds, eight weeks (invented)
note: Invented study, people and numbers.
angles: flexion
group: { name: men, reference: male, stature: 178 cm, mass: 78 kg, training: 0 years }
target: { action: knee extension, from: 75 deg, to: 100 deg }
programs:
  long holds:
    weeks: 8
    sessions per week: 3
    work:
      - { hold: knee extension, at: 90 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5 }
  short holds:
    weeks: 8
    sessions per week: 3
    work:
      - { hold: knee extension, at: 40 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5 }
study:
  cited: { authors: Invented A and B, year: 2020, journal: J Invented, pages: "1:1–9", known: recalled }
  known: read
  groups:
    long holds:
      people: 12
      assumed: [The rest is not known.]
      left out: [Activity rose.]
      observed:
        - { isometric: knee extension, at: 90 deg, change: 12 %, sd: 9.25 %, source: abstract }
        - { optimum: knee extension, change: 4 deg, se: 2 deg, source: figure, doubt: Read off a curve. }
        - { growth: quadriceps, measure: volume, change: -0.4 %, spread: unknown, source: table, fit: no }
        - { fibres: vastus lateralis, found: no clear change, source: table }
    short holds:
      assumed: [The rest is not known., The effort is a guess.]
      observed:
        - { isokinetic: back squat, speed: unknown, way: lifting, change: 3 %, spread: unknown, source: table }
`;

const published = (name: string) => readFileSync(`scenarios/studies/${name}.yaml`, 'utf8');

async function shown(file: string, text: string) {
  const { results } = { results: undefined, ...(await run(file, text)) };
  if (!results) throw new Error(file);
  return { results, words: textsUnder(results, heading).join('\n') };
}

describe('the report of a study of one’s own', () => {
  it('has a table a group, observed and spread as the file gives them', async () => {
    const results = await resultsOf(invented);
    const [head, ...rows] = tableUnder(results, heading);
    expect(head).toEqual(['what', 'predicted', 'observed', 'spread']);
    // As written above; one decimal, 9.25 up to 9.3.
    expect(rows.map(([what, , ...observed]) => [what, ...observed])).toEqual([
      ['hold, knee extension 90°', '+12.0 %', 'sd 9.3 %'],
      ['strongest angle, knee extension', '+4.0°', 'se 2.0°'],
      ['volume, quadriceps', '-0.4 %', 'unknown'],
      ['fibre length, vastus lateralis', 'no clear change', 'not given'],
    ]);
  });

  it('predicts what predictStudy says of the same file, read on its own', async () => {
    const { study, ...results } = await resultsOf(invented);
    const [long = [], short = []] = predictStudy(await studyCase('f.yaml', invented), coefficients);
    expect(study?.groups.map(({ outcomes }) => outcomes.map((one) => one.prediction))).toEqual([
      long,
      short,
    ]);
    const [, ...rows] = tableUnder({ ...results, ...(study ? { study } : {}) }, heading);
    // Per cent of the value before, degrees for the strongest angle (unit conversion by hand).
    const inUnit = long.map(({ change = Number.NaN }, i) =>
      i === 1 ? toDegrees(change) : 100 * change,
    );
    const told = rows.map(([, predicted = '']) => Number.parseFloat(predicted));
    expect(told).toEqual(inUnit.map((value) => expect.closeTo(value, 1)));
    expect(Math.abs(inUnit[0] ?? 0)).toBeGreaterThan(1);
    expect(rows[1]?.[1]).toMatch(/°$/);
  });

  it('says why there is no prediction, what was assumed, left out and doubted, and the citation', async () => {
    const { words } = await shown('my-study.yaml', invented);
    for (const sentence of [
      '"long holds" (12 people):',
      '"short holds" (number of people not given):',
      'Study: Invented A and B, 2020, J Invented, 1:1–9. These details are recalled, not looked up. The findings are read (abstract, figure and table).',
      'No prediction ("short holds"): set speed lifting, back squat peak: a lift is tested over a range, and none is given.',
      'Assumed: The rest is not known.',
      'Assumed ("short holds"): The effort is a guess.',
      'Found too ("long holds"): Activity rose.',
      'Doubt ("long holds"): strongest angle, knee extension: Read off a curve.',
      'Not for the fit ("long holds"): volume, quadriceps.',
      'No study named my-study is among them. A new file is taken into the fit only by `npm run calibrate`',
    ])
      expect(words).toContain(sentence);
    expect(words).not.toContain('torqueleaf evidence');
  });

  it('shows it after the verdict, on the terminal too, within 40 columns', async () => {
    const results = await resultsOf(invented);
    const headings = fullReport(results).sections.map((section) => section.heading);
    expect(headings.slice(0, 2)).toEqual(['Which program', heading]);
    const text = renderTerminal(shortReport(results), 40);
    expect(text).toContain(heading);
    expect(Math.max(...text.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(40);
  });

  it('stays where a notebook orders the report', async () => {
    const ordered = await resultsOf(`${invented}notebook: [{ text: Mine. }]\n`);
    expect(blocksUnder(ordered, heading)).toEqual(blocksUnder(await resultsOf(invented), heading));
  });

  it('stands in the data: shares, degrees for the strongest angle', async () => {
    const results = await resultsOf(invented);
    const [long = []] = predictStudy(await studyCase('f.yaml', invented), coefficients);
    const { study } = JSON.parse(JSON.stringify(resultsJson(results)));
    expect(study).toMatchObject({
      cited: { authors: 'Invented A and B', year: 2020, known: 'recalled' },
      known: 'read',
      calibration: 'not held',
      groups: [
        { program: 'long holds', people: 12, leftOut: ['Activity rose.'] },
        { program: 'short holds', outcomes: [{ because: expect.stringContaining('range') }] },
      ],
    });
    const [hold, optimum, growth, fibres] = study.groups[0].outcomes;
    expect(hold).toEqual({
      what: 'hold, knee extension 90°',
      unit: 'share',
      predicted: expect.closeTo(long[0]?.change ?? Number.NaN, 4),
      observed: 0.12,
      spread: { kind: 'sd', value: 0.0925 },
      source: 'abstract',
      isForFit: true,
    });
    expect(optimum).toMatchObject({ unit: 'degrees', observed: 4, spread: { value: 2 } });
    expect(growth).toMatchObject({ spread: { kind: 'unknown' }, isForFit: false });
    expect(fibres).toMatchObject({ direction: 'no clear change' });
  });

  it('has no prediction where no load is too heavy: a weight hung straight below the knee', async () => {
    const hung = invented.replace(
      'isokinetic: back squat, speed: unknown, way: lifting',
      'isometric: hung-weight knee extension, at: 90 deg',
    );
    const { study } = await resultsOf(hung);
    expect(study?.groups[1]?.outcomes[0]?.prediction).toEqual({
      because: 'no load can be held there before training, or none is too heavy',
    });
  });
});

describe('the report of a study that the project holds', () => {
  it('points to the prediction made without it', async () => {
    const { words } = await shown('scenarios/studies/alegre-2014.yaml', published('alegre-2014'));
    expect(words).toContain('A study named alegre-2014 is among them, so this is no test');
    expect(words).toContain('`torqueleaf evidence` shows what was predicted without it');
  });
});

describe('a file without a study', () => {
  it('has neither section nor key', async () => {
    const results = await resultsOf(startingScenario);
    expect(fullReport(results).sections.map((section) => section.heading)).not.toContain(heading);
    expect(Object.keys(results)).not.toContain('study');
    expect(Object.keys(resultsJson(results))).not.toContain('study');
  });
});
