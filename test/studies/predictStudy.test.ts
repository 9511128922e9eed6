import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { recordWork, replay } from '../../src/physiology/recordedWork.ts';
import { heaviestSingles, untrainedState } from '../../src/physiology/trainedState.ts';
import { train } from '../../src/physiology/training.ts';
import { predictGroup } from '../../src/stages/study/predictGroup.ts';
import { recordGroup } from '../../src/stages/study/recordGroup.ts';
import { studyCase } from '../../src/stages/study/studyCase.ts';
import { coefficients } from '../../src/tables/adaptation.ts';
import { liftNamed } from '../../src/tables/lifts.ts';

/** Work recorded once and weighed again must say what training anew says. */

const read = (name: string) =>
  studyCase(name, readFileSync(`scenarios/studies/${name}.yaml`, 'utf8'));

describe('recorded work', () => {
  it('weighed again with the same coefficients, leaves the state that training left', async () => {
    const { athlete, groups } = await read('kubo-2019');
    const block = groups[1]?.block;
    if (!block) throw new Error('no group');
    const trained = train(athlete, block, coefficients);
    const again = replay(recordWork(athlete, block, coefficients), coefficients);
    expect(again.changes).toEqual(trained.changes);
    expect(again.practice).toEqual(trained.practice);
  });

  it('gives the heaviest singles that statics give, with the same and with other coefficients', async () => {
    const study = await read('pinto-2012');
    const [group] = study.groups;
    if (!group) throw new Error('no group');
    const recorded = recordGroup(study, group, coefficients);
    const single = group.group.observed.findIndex(({ outcome }) => outcome.kind === 'single');
    const { outcome } = group.group.observed[single] ?? {};
    if (outcome?.kind !== 'single') throw new Error('no single');
    const range = { lift: liftNamed(outcome.of), from: outcome.from, to: outcome.to };
    const stronger = { ...coefficients, driveAmplitude: 1.3 * coefficients.driveAmplitude };
    for (const c of [coefficients, stronger]) {
      const after = train(study.athlete, group.block, c);
      const [then] = heaviestSingles(study.athlete, [range], after, c);
      const [before] = heaviestSingles(study.athlete, [range], untrainedState, c);
      const gain = (then?.load ?? 0) / (before?.load ?? 1) - 1;
      const fast = predictGroup(recorded, c)[single]?.change ?? 0;
      expect(Math.abs(fast - gain)).toBeLessThan(0.005);
    }
  });
});
