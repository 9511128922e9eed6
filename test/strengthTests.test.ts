import { describe, expect, it } from 'vitest';
import { meanTorque } from '../src/physiology/strengthCurve.ts';
import { run } from '../src/run.ts';
import { around } from './notebook/tested.ts';
import { blocksUnder, textsUnder } from './page/askReport.ts';

const entry = (trials: string, more: string, action = 'knee extension') =>
  `  - { action: ${action}, contraction: isometric, trials: { ${trials} }, ${more} }`;

const usual = '40 deg: [112, 118], 60 deg: [163, 158], 80 deg: [171, 170]';
const files = { 'tests/a.csv': 'Angle;Torque\n40;112,5\n40;118\n60;163\n60;158\n80;171\n80;170\n' };

const runWith = (text: string) =>
  run('f.yaml', text, (path) =>
    path === 'tests/a.csv' ? { text: files[path] } : { fault: `there is no file ${path}` },
  );

/** Problems, else remarks, with their hints. */
async function said(text: string): Promise<string[]> {
  const { problems, notes } = { problems: undefined, notes: [], ...(await runWith(text)) };
  return (problems ?? notes).map(({ message, hint }) => `${message} | ${hint}`);
}

async function resultsOf(text: string) {
  const { results } = { results: undefined, ...(await runWith(text)) };
  if (!results) throw new Error((await said(text)).join('\n'));
  return results;
}

describe('torques that sit oddly with the athlete', () => {
  it('usual ones are not remarked on', async () => {
    expect(await said(around(entry(usual, 'unit: N m')))).toEqual([]);
  });

  // What the mean of both sexes makes, for 63.5 kg and 0.4 to 5 N m for each kg of body mass at 60°
  // (Šarabon 2021 for the mean; the ends are a working value), is 2.8 × 63.5 = 178 N m.
  it('pounds called kilograms', async () => {
    // 95, 110 and 115 lb at 36 cm are 152, 176 and 184 N m; called kg, 335, 388 and 406 N m.
    const text = around(
      entry(
        '40 deg: [95, 94], 60 deg: [110, 98], 80 deg: [115, 109]',
        'unit: kg, lever arm: 36 cm',
      ),
    );
    expect(await said(text)).toEqual([
      expect.stringMatching(
        /^knee extension of 335 N m at 40° is 5\.3 N m for each kg of body mass, and 2 more of its angles with it; people make 0\.\d to \d\.\d there \| were the trials in N m \(a torque already\) or lb, they would be usual: check the unit and the lever arm$/,
      ),
    ]);
  });

  it('torques called newtons', async () => {
    // 170 N at 10 cm are 17 N m, 0.27 for each kg; 170 N m are usual, and so are 170 kg at 10 cm.
    const text = around(entry(usual, 'unit: N, lever arm: 10 cm'));
    expect(await said(text)).toEqual([
      expect.stringMatching(
        /^knee extension of 12 N m at 40° is 0\.2 N m for each kg of body mass, and 2 more of its angles with it; people make 0\.\d to \d\.\d there \| were the trials in N m \(a torque already\) or kg, they would be usual: check the unit and the lever arm$/,
      ),
    ]);
    // 51 N m are possible, but no athlete of this size is known to be so weak at every angle.
    expect(await said(around(entry(usual, 'unit: N, lever arm: 30 cm')))).toEqual([
      'the tests of knee extension together would fit people far better if they were read another way | check the unit and where angles count from; the report says what would explain it',
    ]);
  });

  it('a torque no unit explains', async () => {
    const text = around(entry('60 deg: [520, 515], 80 deg: [171, 170]', 'unit: N m'));
    expect(await said(text)).toEqual([
      expect.stringMatching(
        /^knee extension of 520 N m at 60° is 8\.2 N m for each kg of body mass; people make 0\.\d to \d\.\d there \| check unit, angle, body mass and that it is of one side$/,
      ),
    ]);
  });

  it('angles counted the other way', async () => {
    // The mean woman at 60, 80, 100 and 110° of flexion, written as included angles.
    const trials = [60, 80, 100, 110].map((deg) => {
      const torque = meanTorque('knee extension', 'female', 63.5, deg).toFixed(1);
      return `${180 - deg} deg: [${torque}, ${torque}]`;
    });
    expect(await said(around(entry(trials.join(', '), 'unit: N m')))).toEqual([
      expect.stringMatching(
        /^the trials of knee extension miss the usual curve by [34]\d %, and by 0 % if their angles are counted the other way round \| check whether 0 or 180 deg is the straight joint, and angles: flexion or included; nothing to correct if it is right$/,
      ),
    ]);
  });

  it('a limb that weighs more than was pushed', async () => {
    const text = around(
      entry(
        '10 deg: [10, 11], 60 deg: [90, 92]',
        'unit: N m, posture: seated, gravity: { weighed: 12.5 N m, at: 0 deg }',
        'knee flexion',
      ),
    );
    // 12.5 × cos 10° = 12.3 (hand calculation).
    expect(await said(text)).toEqual([
      'the weight of the limb makes 12.3 N m at 10°; taken from these trials it leaves nothing for the muscles | check gravity: and the unit; if the device took the weight out, write gravity: corrected',
    ]);
  });
});

describe('the report says what was done to the numbers', () => {
  const heading = 'What was measured';
  const listed = async (text: string) => textsUnder(await resultsOf(text), heading);

  it('of torques', async () => {
    const texts = await listed(
      around(
        entry(
          '40 deg: [300, 310], 60 deg: [400, 410]',
          'unit: N, lever arm: 36 cm, posture: seated, gravity: estimated, angle taken: at rest, familiarised: no',
        ),
      ),
    );
    for (const text of [
      'Knee extension was measured as a force in N; torque is that force times the lever arm of 36 cm.',
      'Angles of knee extension were taken at rest; under load the joint moves, a knee by 10–20° on a soft rig (from memory), so that torques may belong to other angles.',
      'Knee extension was tested without practice before: part of a later gain may be learning the test.',
      'Hip angle of the tests of knee extension not given: hips bent as in sitting are taken. Lying flat both directions of the knee are weaker, flexion most.',
    ])
      expect(texts).toContain(text);
    // de Leva 1996, women: shank 3.054 kg at 0.4352 of 0.413 m, foot 0.819 kg at the ankle:
    // 9.80665 × 0.413 × (3.054 × 0.4352 + 0.819) = 8.7 N m (hand calculation).
    expect(texts.join('\n')).toMatch(
      /Knee extension: the weight of shank and foot \(8\.7 N·m with the shank level, estimated from body mass, lengths and tables\) was added, times the cosine of knee flexion\./,
    );
    expect(texts.join('\n')).not.toContain('do not say whether');
  });

  it('of weights on a scale, both limbs and what is not said', async () => {
    const texts = await listed(
      around(entry(usual, 'unit: kg, lever arm: 20 cm, side: both, with: { hip: 85 deg }')),
    );
    for (const text of [
      'Knee extension was measured as a force in kg, a mass on a scale taken as the force of its weight (1 kg is 9.81 N); torque is that force times the lever arm of 20 cm.',
      'Knee extension was pushed with both limbs together: half is taken for each. One limb alone often makes more than half.',
      'Tests of knee extension do not say whether the weight of the limb was taken out: it is taken that the device did so.',
    ])
      expect(texts).toContain(text);
    expect(texts.join('\n')).not.toContain('Hip angle of');
  });

  it('of a table, and the torques are those of the muscles', async () => {
    const text = around(
      '  - { action: knee extension, contraction: isometric, unit: N m, trials from: tests/a.csv, columns: { angle: Angle, value: Torque }, decimal: comma, posture: seated, gravity: { weighed: 12.5 N m, at: 0 deg } }',
    );
    const results = await resultsOf(text);
    expect(textsUnder(results, heading)).toContain(
      'Knee extension: 6 trials read from tests/a.csv.',
    );
    // Best of each angle with 12.5 × cos: 118 + 9.58, 163 + 6.25, 171 + 2.17 (hand calculation).
    const table = blocksUnder(results, heading).find(({ kind }) => kind === 'table');
    expect(table?.kind === 'table' && table.rows.map(([, , measured]) => measured)).toEqual([
      '128 N·m',
      '169 N·m',
      '173 N·m',
    ]);
  });

  it('of a single estimated from repetitions', async () => {
    const texts = await listed(
      around(
        `${entry(usual, 'unit: N m')}\n  - { lift: back squat, to: 110 deg, reps: 5, load: 75 kg }`,
      ),
    );
    // 75 kg × 5 by the formulas: median 87.4, 84.4 to 89.3 kg (three quarters of 100 kg × 5), to half kilograms.
    expect(texts.join('\n')).toContain(
      'Back squat single 87.5 kg, estimated from 5 × 75 kg (84.5 kg to 89.5 kg by seven formulas); the torque curves alone give',
    );
    expect(texts).toContain(
      'Singles from repetitions: the median of Epley 1985, Brzycki 1993, Lander 1985, Lombardi 1989, Mayhew 1992, O’Conner 1989 and Wathan 1994 (formulas from memory), with the least and the most of them; up to 12 repetitions.',
    );
  });
});
