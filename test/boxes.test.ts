import { describe, expect, it } from 'vitest';
import { run } from '../src/run.ts';

/** Boxes that nobody sits on, and boxes lower than a usual knee lets anybody sit. */

const scenario = (work: string) => `title: Boxes
angles: flexion
group: { name: invented women, reference: female, stature: 168 cm, mass: 63 kg, training: 3 years }
target: { action: knee extension, from: 60 deg, to: 90 deg, within: 8 weeks }
programs:
  p: { weeks: 8, sessions per week: 2, work: [{ ${work}, load: 70 %, sets: 4, reps: 5, rest: 60 s }] }
`;

async function problemsOf(work: string): Promise<string[]> {
  const { problems } = { problems: undefined, ...(await run('f.yaml', scenario(work))) };
  return (problems ?? []).map(({ message, hint }) => `${message} | ${hint}`);
}

describe('boxes', () => {
  it('a deadlift does not sit down', async () => {
    expect(await problemsOf('lift: deadlift, from: 0 deg, to: box 40 cm')).toEqual([
      'the deadlift is led by the hip, so it does not sit down on a box | write the angle, at most 125 deg of hip flexion',
    ]);
  });

  it('a box below the usual limit of the knee says so', async () => {
    const told = await problemsOf('lift: back squat, from: 0 deg, to: box 15 cm');
    // 144 deg is the usual limit: Roaas and Andersson 1982 (recalled).
    expect(told.join('\n')).toMatch(
      /^box 15 cm cannot be reached: with this body the back squat sits on a box \d+ cm high at 144 deg of knee flexion, the usual limit of a knee, and \d+ cm at \d+ deg of knee flexion \| write box \d+ cm, or a height between the two$/,
    );
  });
});
