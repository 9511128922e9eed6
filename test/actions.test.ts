import { describe, expect, it } from 'vitest';
import { formatProblems } from '../src/notebook/text/problem.ts';
import { toDegrees } from '../src/numeric/degrees.ts';
import { type Results, run } from '../src/run.ts';
import { actionNames, actions } from '../src/tables/actions.ts';
import { strengthCurves } from '../src/tables/strength.ts';

/** Every joint action can be tested, aimed at and held; invented person and programs. */

function scenarioOf(action: string, at: number, other: number, trial = ''): string {
  const [from, to] = [at - 10, at + 10];
  const tests = trial === '' ? '' : `tests:\n  - ${trial}\n`;
  return `title: ${action}
angles: flexion
group: { name: mean man, reference: male, stature: 178 cm, mass: 78 kg, training: 0 years }
${tests}target: { action: ${action}, from: ${from} deg, to: ${to} deg }
programs:
  here:
    weeks: 8
    sessions per week: 3
    work: [{ hold: ${action}, at: ${at} deg, effort: 90 %, sets: 4, reps: 5, seconds: 5 }]
  elsewhere:
    weeks: 8
    sessions per week: 3
    work: [{ hold: ${action}, at: ${other} deg, effort: 90 %, sets: 4, reps: 5, seconds: 5 }]
`;
}

async function resultsOf(text: string): Promise<Results> {
  const { results, problems } = { results: undefined, ...(await run('action.yaml', text)) };
  if (!results) throw new Error(formatProblems(problems ?? [], () => text));
  return results;
}

describe.each(actionNames)('%s', (name) => {
  const { shortDeg, longDeg } = actions[name];
  const place = (share: number) => Math.round(shortDeg + share * (longDeg - shortDeg));
  const [short, long] = [place(0.3), place(0.8)];

  it('short holds gain most near their own angle, in the target they were made for', async () => {
    const { ranking } = await resultsOf(scenarioOf(name, short, long));
    const gain = (program: string) =>
      ranking.find((placed) => placed.program.name === program)?.program;
    expect(gain('here')?.landing.hitShare ?? 0).toBeGreaterThan(
      gain('elsewhere')?.landing.hitShare ?? 1,
    );
  });

  it('long holds beat short ones where the muscle is long', async () => {
    const { ranking } = await resultsOf(scenarioOf(name, long, short));
    expect(ranking[0]?.program.name).toBe('here');
    expect(ranking[0]?.program.landing.meanGain ?? 0).toBeGreaterThan(0.03);
    expect(ranking[0]?.program.landing.meanGain ?? 1).toBeLessThan(0.405 + 1e-9);
  });

  it('a test half as strong again as the table raises the curve, held back by doubt', async () => {
    if (name === 'knee extension') return;
    const { perKg, atDeg } = strengthCurves[name];
    const measured = (1.5 * perKg.male.value * 78).toFixed(1);
    const trial = `{ action: ${name}, contraction: isometric, trials: { ${atDeg} deg: [${measured}] }, unit: N m }`;
    const [fit] = (await resultsOf(scenarioOf(name, short, long, trial))).fits;
    expect(fit?.strength.scale).toBeGreaterThan(1.2);
    expect(fit?.strength.scale).toBeLessThan(1.5);
  });
});

describe('included angles', () => {
  it('turn hip and elbow round but leave ankle and shoulder alone', async () => {
    const written = scenarioOf('hip extension', 60, 30)
      .replace('angles: flexion', 'angles: included')
      .replace('from: 50 deg, to: 70 deg', 'from: 130 deg, to: 110 deg')
      .replace('at: 60 deg', 'at: 120 deg')
      .replace('at: 30 deg', 'at: 150 deg');
    const hip = await resultsOf(written);
    expect(toDegrees(hip.question.target.from)).toBeCloseTo(50, 9);
    const ankle = await resultsOf(
      scenarioOf('ankle plantarflexion', 10, -20).replace('angles: flexion', 'angles: included'),
    );
    expect(toDegrees(ankle.question.target.from)).toBeCloseTo(0, 9);
  });
});
