import { describe, expect, it } from 'vitest';
import { toRadians } from '../../src/numeric/degrees.ts';
import { demandsOver, heaviestLoad } from '../../src/physiology/heaviestLoad.ts';
import { jointEfforts } from '../../src/physiology/jointEfforts.ts';
import { restingCapacity } from '../../src/physiology/trainedState.ts';
import type { ActionName } from '../../src/tables/actions.ts';
import { liftNamed } from '../../src/tables/lifts.ts';
import { meanPerson } from '../studies/meanPerson.ts';

/**
 * Bryanton 2012, J Strength Cond Res 26:2820: ten trained women squatting with 50–90 % of their best;
 * torque over the largest torque of the same joint at the same angle. Knee: rises with depth, not
 * with load. Calf: with load, not with depth. Hip: with both.
 */
const person = meanPerson('female', true);
const capacity = restingCapacity(person);
const lift = liftNamed('back squat');
const best = heaviestLoad({ lift, from: 0, to: toRadians(105) }, person.body, capacity).load;

function effort(action: ActionName, kneeDeg: number, share: number): number {
  const at = { lift, from: toRadians(kneeDeg), to: toRadians(kneeDeg) };
  const [posture] = demandsOver(at, person.body, share * best);
  if (!posture || 'impossible' in posture.asked) throw new Error('no posture');
  return jointEfforts(posture.asked, capacity)[action] ?? 0;
}

const depths = [45, 60, 75, 90, 105];
const loads = [0.5, 0.7, 0.9];

describe('relative effort in the squat by depth and load (Bryanton 2012)', () => {
  it.each(loads)('knee effort rises with depth at %d of the best', (load) => {
    const efforts = depths.map((deg) => effort('knee extension', deg, load));
    for (const [i, one] of efforts.entries()) expect(one).toBeGreaterThan(efforts[i - 1] ?? 0);
  });

  it('hip effort rises with depth down to the level thigh and with load', () => {
    expect(effort('hip extension', 90, 0.7)).toBeGreaterThan(effort('hip extension', 45, 0.7));
    expect(effort('hip extension', 90, 0.9)).toBeGreaterThan(effort('hip extension', 90, 0.5));
  });

  it('calf effort rises with load and hardly changes with depth', () => {
    const byDepth =
      effort('ankle plantarflexion', 105, 0.7) - effort('ankle plantarflexion', 45, 0.7);
    const byLoad =
      effort('ankle plantarflexion', 75, 0.9) - effort('ankle plantarflexion', 75, 0.5);
    expect(byLoad).toBeGreaterThan(0.05);
    expect(Math.abs(byDepth)).toBeLessThan(byLoad / 2);
  });

  it('prints the conflict: by statics the knee works harder with more load, where the study found it hardly did', () => {
    const [light, heavy] = [0.5, 0.9].map((load) => effort('knee extension', 90, load));
    console.log(
      `knee effort at 90°, 50 → 90 % of the best: model ${light?.toFixed(2)} → ${heavy?.toFixed(2)} | Bryanton 2012: hardly changed (statics itself contradicts this: a heavier bar must ask more of some joint at the same posture)`,
    );
    expect(heavy).toBeGreaterThan(light ?? 0);
  });
});
