import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { measuredStretch } from '../src/mechanics/bandTension.ts';
import type { Rig } from '../src/mechanics/rig.ts';
import { formatProblems } from '../src/notebook/text/problem.ts';
import { toRadians } from '../src/numeric/degrees.ts';
import { fullReport } from '../src/page/fullReport.ts';
import { renderMarkdown } from '../src/page/markdown.ts';
import { bodyOf } from '../src/physiology/body.ts';
import { demandsOver, stickingPoint } from '../src/physiology/heaviestLoad.ts';
import { restingCapacity } from '../src/physiology/trainedState.ts';
import { type Results, run } from '../src/run.ts';
import { liftNamed } from '../src/tables/lifts.ts';

const text = readFileSync('scenarios/push-off-chains.yaml', 'utf8');

async function told(changed: string): Promise<string> {
  const { problems, notes } = { problems: undefined, notes: [], ...(await run('f.yaml', changed)) };
  return formatProblems(problems ?? notes, () => changed);
}

async function resultsOf(changed: string): Promise<Results> {
  const { results, problems } = { results: undefined, ...(await run('f.yaml', changed)) };
  if (!results) throw new Error(formatProblems(problems ?? [], () => changed));
  return results;
}

function changed(...changes: readonly (readonly [string, string])[]): string {
  return changes.reduce((now, [from, to]) => {
    if (!now.includes(from)) throw new Error(`not in the scenario: ${from}`);
    return now.replace(from, () => to);
  }, text);
}

function exerciseOf(results: Results, name: string) {
  const program = results.ranking.find((placed) => placed.program.name === name)?.program;
  const planned = program?.plan.exercises[0];
  if (!program || planned?.exercise.kind !== 'lift') throw new Error(name);
  return { program, planned, exercise: planned.exercise };
}

describe('loads with chains and bands on', () => {
  it('a share is of the heaviest bar with them on, which the plain tested single does not stand for', async () => {
    const results = await resultsOf(text);
    const plain = exerciseOf(results, 'plain squat');
    const chains = exerciseOf(results, 'squat with chains');
    const bands = exerciseOf(results, 'squat with helping bands');
    expect([plain, chains, bands].map(({ planned }) => planned.tested)).toEqual([
      true,
      false,
      false,
    ]);
    expect(plain.exercise.heaviest).toBe(145);
    // At 110°, where the squat is lost, the chains lie on the floor.
    expect(chains.exercise.heaviest).toBeCloseTo(145, 1);
    expect(bands.exercise.heaviest).toBeGreaterThan(145);
    for (const { exercise } of [plain, chains, bands])
      expect(exercise.load).toBeCloseTo(0.8 * exercise.heaviest, 9);
  });

  it('at the sticking point the heaviest rigged bar comes to the plain tested single lost there (145 kg at 110°), chains and bands alike', async () => {
    const results = await resultsOf(text);
    for (const name of ['squat with chains', 'squat with helping bands']) {
      const { planned, exercise } = exerciseOf(results, name);
      const { range, heaviest } = exercise;
      expect(planned.heaviest?.at.angle).toBeCloseTo(toRadians(110), 9);
      const capacity = restingCapacity(results.athlete);
      const rigged = stickingPoint(range, results.athlete.body, capacity, heaviest).effort;
      const plain = stickingPoint(
        { lift: range.lift, from: range.from, to: range.to },
        results.athlete.body,
        capacity,
        145,
      ).effort;
      expect(rigged).toBeCloseTo(plain, 5);
    }
  });

  it('what is kept of one rig is never given for another', () => {
    const lift = liftNamed('back squat');
    const rigs: Rig[] = [3, 9].map((kgPerMetre) => [
      { kind: 'chains', kgPerMetre, length: 2, cord: 0 },
    ]);
    const stretch = measuredStretch([
      { length: 0.5, tension: 50 },
      { length: 1.5, tension: 400 },
    ]);
    rigs.push([{ kind: 'bands', anchor: 0, stretch }]);
    const body = bodyOf({ reference: 'male', stature: 1.8, mass: 80, lengths: {}, limits: {} });
    const range = { lift, from: 0, to: toRadians(90) };
    const knees = [range, ...rigs.map((rig) => ({ ...range, rig }))].map((one) => {
      const twice = [demandsOver(one, body, 60), demandsOver(one, body, 60)];
      expect(twice[0]).toBe(twice[1]);
      const { asked } = twice[0]?.[0] ?? {};
      return asked && 'torques' in asked ? asked.torques.hip : Number.NaN;
    });
    expect(new Set(knees).size).toBe(4);
  });
});

describe('what the report says of them', () => {
  it('the load, what it comes to at both ends, what is taken for granted, sources and care', async () => {
    const results = await resultsOf(text);
    const report = renderMarkdown(fullReport(results));
    expect(report).toMatch(
      /with 116 kg and chains "heavy chains", 80 % of the heaviest single over this range with the same on \(145 kg, predicted, not tested\)\. With everything on, the load comes to 12\d(\.5)? kg at 0° and 116 kg at 110°\./,
    );
    expect(report).toContain(
      'Chains "heavy chains": two of 1.2 m, one at each end of the bar, on 1 m of light cord; they weigh what the table of short-link chain says of a 20 mm link, and the bar carries what is off the floor.',
    );
    expect(report).toContain(
      'Bands "rack loops", fixed 2.3 m above the floor: straight lines between the pulls measured, from 0.7 m to 1.4 m; their slopes are carried on, down to slack and up to 1.54 m.',
    );
    expect(report).toContain(
      'The model gives chains and bands no other merit than where they move the load',
    );
    expect(report).toMatch(/\| weight of chains +\| read +\| DIN 766/);
    expect(report).not.toContain('stiffness of rubber');
    expect(report).toMatch(/\| \d\. squat with helping bands.*\| \(3\) \(6\) \(9\) \|/);
    expect(report).toMatch(/\| \d\. squat with chains.*\| \(3\) \(6\) +\|/);
  });

  it('rubber is called an estimate, with its spread: 99 N·(2 − 1/4)·√5/1.5 = 258 N for one loop, 516 for two; 231 and 1155 at 1 and 5 MPa', async () => {
    const rubber = changed(
      ['tension: { 0.7 m: 70 N, 1.0 m: 290 N, 1.4 m: 500 N }', rubberLoops],
      ['anchor: 2.3 m', 'count: 2'],
    );
    const report = renderMarkdown(fullReport(await resultsOf(rubber)));
    expect(report).toContain(
      'Bands "rack loops", fixed at the floor: an estimate from their rubber, not a measurement. Stretched to twice their length they are taken to pull 517 N together, and could as well pull 231 N or 1155 N (rubber differs fivefold in stiffness). Measure their pull at two lengths.',
    );
    expect(report).toContain('kg at 110° (the pull of the bands is a rough estimate).');
    expect(report).toMatch(/\| stiffness of rubber +\| read +\| natural rubber 1 to 5 MPa/);
  });

  it('bands beside a cable are fixed at its pulley and make the stack heavier', async () => {
    const curl = changed(
      ['0.7 m: 70 N, 1.0 m: 290 N, 1.4 m: 500 N', '0.7 m: 20 N, 1.0 m: 60 N, 1.4 m: 90 N'],
      [
        'lift: back squat, from: 0 deg, to: 110 deg, load: 80 %, bands',
        'lift: cable curl, from: 20 deg, to: 90 deg, load: 5 kg, bands',
      ],
    );
    const report = renderMarkdown(fullReport(await resultsOf(curl)));
    expect(report).toContain(
      'Bands "rack loops", fixed at the pulley of the cable: straight lines',
    );
    expect(report).toMatch(
      /with 5 kg and bands "rack loops".*With everything on, the load comes to \d+(\.5)? kg at 20° and \d+(\.5)? kg at 90°\./,
    );
  });

  it('bands fixed at a height that the bar passes pull above and below it and are slack between', async () => {
    const between = changed(['anchor: 2.3 m', 'anchor: 1.3 m'], ['0.7 m: 70 N', '0.3 m: 30 N']);
    const report = renderMarkdown(fullReport(await resultsOf(between)));
    expect(report).toMatch(/The bands are slack at [1-9]\d*–\d\d°\./);
    expect(report).toMatch(/shorter than was measured \(0\.3 m\) at 0–\d+° and \d+–\d+°\./);
  });

  it('where bands are slack, or longer or shorter than was measured, the angles are named', async () => {
    const short = changed([
      '0.7 m: 70 N, 1.0 m: 290 N, 1.4 m: 500 N',
      '0.9 m: 90 N, 1.25 m: 490 N',
    ]);
    const report = renderMarkdown(fullReport(await resultsOf(short)));
    expect(report).toMatch(/The bands are slack at 0–\d+°\./);
    expect(report).toMatch(/longer than is known of them \(1\.25 m\) at \d+–110°\./);
    expect(report).toMatch(/shorter than was measured \(0\.9 m\) at \d+–\d+°\./);
  });
});

const pressWithChains = 'lift: overhead press, from: 10 deg, to: 120 deg, load: 8 RM, chains';
const rubberLoops = 'rubber: { width: 22 mm, thickness: 4.5 mm, unstretched: 1 m, strands: 2 }';

describe('what cannot be done with bands', () => {
  it('bands stretched far beyond what was measured: where, how long, what to do', async () => {
    const far = changed(['1.0 m: 290 N, 1.4 m: 500 N', '1.0 m: 290 N']);
    const line = far.split('\n').findIndex((l) => l.includes('bands: rack loops')) + 1;
    expect(await told(far)).toMatch(
      new RegExp(
        `^f\\.yaml:${line}:\\d+: at 110° the bands "rack loops" are 1\\.3\\d m long; their pull is known to 1\\.00 m and guessed no farther than 1\\.10 m\\n.*\\n.*\\n  hint: measure their pull at 1\\.3\\d m too, or fix them nearer the bar$`,
      ),
    );
  });

  it('bands that lift more than the bar weighs', async () => {
    const strong = changed(['load: 80 %, bands', 'load: 30 kg, bands']);
    expect(await told(strong)).toMatch(
      /: at 110° the bands "rack loops" lift 4\d(\.5)? kg, more than the load of 30 kg: the bar would rise by itself\n.*\n.*\n {2}hint: use weaker bands, fix them lower, or load more than 4\d(\.5)? kg$/,
    );
  });

  it('bands so strong that no bar could be balanced under them', async () => {
    const wild = changed(['1.0 m: 290 N, 1.4 m: 500 N', '1.0 m: 1000 N, 1.4 m: 5000 N']);
    expect(await told(wild)).toMatch(
      /: with the bands "rack loops" the back squat cannot be held in balance over the foot at \d+°\n.*\n.*\n {2}hint: use weaker bands, another load, or end the range earlier$/,
    );
  });

  it('a load beyond the heaviest with the same bands on says that it counts them', async () => {
    const heavy = changed(['load: 80 %, bands', 'load: 300 kg, bands']);
    expect(await told(heavy)).toMatch(
      /: 300 kg is more than this posture can hold: the heaviest back squat from 0° to 110° is (1[6-9]|2\d)\d(\.5)? kg \(predicted, lost at 110° by the (knee|hip) extensors, with the same chains or bands on\)\n/,
    );
  });

  it('chains that alone are too much', async () => {
    const heavy = changed(
      ['link: 20 mm, length: 1.2 m, cord: 1 m', 'weighs: 30 kg/m, length: 6 m'],
      ['lift: back squat, from: 0 deg, to: 110 deg, load: 80 %, chains', pressWithChains],
    );
    expect(await told(heavy)).toMatch(
      /: by what is known of this athlete’s strength the overhead press cannot be held at \d+° even with no load but the chains or bands\n/,
    );
  });

  it('chains that never leave the floor are remarked on, not refused', async () => {
    const long = changed(['cord: 1 m', 'cord: 2 m']);
    expect(await told(long)).toMatch(
      /: the chains "heavy chains" add nothing to the back squat from 0° to 110°: they stay on the floor\n.*\n.*\n {2}hint: check the cord and the lift$/,
    );
  });
});
