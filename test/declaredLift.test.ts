import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { formatProblems } from '../src/notebook/text/problem.ts';
import { fullReport } from '../src/page/fullReport.ts';
import { renderMarkdown } from '../src/page/markdown.ts';
import { type Results, run } from '../src/run.ts';
import { liftNamed } from '../src/tables/lifts.ts';
import { declared } from './notebook/declareLift.ts';

const text = readFileSync('scenarios/ski-deep-range.yaml', 'utf8');
const withLift = (body: string) => text.replace('target:', `lifts:\n${body}target:`);

async function resultsOf(changed: string): Promise<Results> {
  const { results, problems } = { results: undefined, ...(await run('f.yaml', changed)) };
  if (!results) throw new Error(formatProblems(problems ?? [], () => changed));
  return results;
}

describe('the back squat declared word for word', () => {
  it('asks the same torques and gives the same forecast as the catalogue’s', async () => {
    const ours = withLift(`  ours: ${declared(liftNamed('back squat'))}\n`).replace(
      /lift: back squat/g,
      'lift: ours',
    );
    const [a, b] = [await resultsOf(text), await resultsOf(ours)];
    expect(ours).toContain('lift: ours');
    a.ranking.forEach(({ program }, i) => {
      const twin = b.ranking[i]?.program;
      expect(twin?.landing).toEqual(program.landing);
      expect(twin?.plan.exercises.map(({ samples }) => samples)).toEqual(
        program.plan.exercises.map(({ samples }) => samples),
      );
    });
  });

  it('tells in the report that it is declared, what is assumed and from where', async () => {
    const ours = withLift(
      '  high squat: { like: back squat, sides: 2, assumed: [The bar is light.], source: our own film }\n',
    ).replace(
      'lift: back squat, from: 0 deg, to: 115 deg',
      'lift: high squat, from: 0 deg, to: 115 deg',
    );
    const report = renderMarkdown(fullReport(await resultsOf(ours)));
    for (const line of [
      'high squat: A lift of the coach’s own: the back squat with its own sides; the rest is assumed as there.',
      'high squat: The bar is light.',
      'high squat: Source: our own film.',
    ])
      expect(report.split('\n')).toContain(`- ${line}`);
  });
});

describe('a declared lift that cannot be balanced', () => {
  const leaning = (range: string) =>
    withLift(
      `  leaning squat: { like: back squat, range: ${range}, follow: [{ joint: ankle, rule: linear, from: 50 deg, per leading: 0 }, { joint: hip, rule: balance }] }\n`,
    );
  const told = async (changed: string) => {
    const { problems, notes } = { problems: [], notes: [], ...(await run('f.yaml', changed)) };
    return formatProblems([...(problems ?? []), ...notes], () => changed);
  };

  it('nowhere in its range: says so at its name, and where it could be', async () => {
    const lines = (await told(leaning('[0 deg, 20 deg]'))).split('\n');
    expect(lines[0]).toBe(
      'f.yaml:27:3: with this body the leaning squat cannot be held in balance anywhere from 0° to 20°',
    );
    expect(lines[2]).toBe('  ^^^^^^^^^^^^^');
    // With the shank 50° forward the hips come back over the foot only once the knee bends enough.
    expect(lines[3]).toMatch(
      /^ {2}hint: it can be from [3-6]\d° to 150°: write that as its range, or check where the load acts and how the joints follow$/,
    );
  });

  it('in a part of its range only: a note that says from where to where', async () => {
    const lines = (await told(leaning('[0 deg, 100 deg]'))).split('\n');
    expect(lines[0]).toMatch(
      /^f\.yaml:27:3: with this body the leaning squat can be held in balance from [3-6]\d° to 100° only, not from 0° to 100°$/,
    );
    expect(lines[3]).toBe('  hint: write that as its range');
  });
});

describe('a declared lift whose load turns no joint', () => {
  it('is refused where work uses it, and not given a heaviest single of tonnes', async () => {
    const idle = withLift(
      '  idle raise: { like: hip flexor raise, resistance: { kind: mass, on: thigh, along: 0, across: 0 cm } }\n',
    ).replace(
      'lift: back squat, from: 0 deg, to: 115 deg',
      'lift: idle raise, from: 0 deg, to: 90 deg',
    );
    const { problems } = { problems: [], ...(await run('f.yaml', idle)) };
    expect(problems?.map(({ message, hint }) => `${message} | ${hint}`)).toEqual([
      'no weight makes the idle raise hard from 0° to 90°: it turns no joint against its muscles there | choose another range or, if the lift is declared here, check where its load acts',
    ]);
  });
});

describe('a measured machine at the hip', () => {
  it('asks its table in proportion to the load, on top of gravity', async () => {
    const machine = withLift(`  multi-hip machine:
    chain: [{ segment: thigh, joint: hip, near: proximal, turn: -1, offset: 180 deg }]
    support: seat
    support direction: 0 deg
    sides: 1
    leads: hip
    range: [0 deg, 90 deg]
    resistance: { kind: machine torque, arm: 20 cm }
`)
      .replace(
        'machines:\n',
        'machines:\n  hip plates: { joint: hip, load: 20 kg, torque: { 0 deg: 30 N m, 90 deg: 40 N m } }\n',
      )
      .replace(
        /lift: back squat, from: 0 deg, to: 115 deg, load: [^,]*/,
        'lift: multi-hip machine, machine: hip plates, from: 0 deg, to: 80 deg, load: 40 kg',
      );
    const { ranking } = await resultsOf(machine);
    const samples = ranking.flatMap(({ program }) =>
      program.plan.exercises.flatMap((exercise) => exercise.samples),
    );
    const at45 = samples.find(
      ({ leading, asked }) =>
        Math.abs(leading - Math.PI / 4) < 1e-9 && asked.torques.knee === undefined,
    );
    // By hand: twice the load of the table, at 45° twice 35 N·m; the raised thigh (41 cm, de Leva’s
    // female mass 14.78 % of 63.5 kg and centre at 36.12 %) asks the flexors and takes m·g·c·sin 45° off.
    const thigh = 0.1478 * 63.5 * 9.80665 * 0.3612 * 0.41 * Math.SQRT1_2;
    expect(at45?.asked.torques.hip).toBeCloseTo(70 - thigh, 6);
  });
});
