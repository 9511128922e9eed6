import { describe, expect, it } from 'vitest';
import { atAngle } from '../../src/mechanics/angleGrid.ts';
import { type Demand, demandOf } from '../../src/mechanics/demand.ts';
import { heaviestLoad, stickingPoint } from '../../src/physiology/heaviestLoad.ts';
import { type SharedLoad, sharedLoad } from '../../src/physiology/sharing.ts';
import { restingCapacity } from '../../src/physiology/trainedState.ts';
import { liftNamed, lifts } from '../../src/tables/lifts.ts';
import { meanPerson } from '../studies/predictGroup.ts';

const radians = Math.PI / 180;
const person = meanPerson('male', true);
const capacity = restingCapacity(person);

/** A lift's posture and how it is shared, with a share of the heaviest load of its range. */
function sharedIn(name: string, toDeg: number, share: number): SharedLoad {
  const lift = liftNamed(name);
  const range = { lift, from: Math.max(lift.rangeDeg[0], 0) * radians, to: toDeg * radians };
  const load = share * heaviestLoad(range, person.body, capacity);
  const { angle } = stickingPoint(range, person.body, capacity, load);
  const asked = demandOf(lift, person.body, load)(angle);
  if ('impossible' in asked) throw new Error(asked.impossible);
  const shared = sharedLoad(asked, capacity, 1);
  if (!shared) throw new Error('nothing shared');
  return shared;
}

const effortOf = (shared: SharedLoad, muscle: string) =>
  shared.efforts.find((entry) => entry.muscle === muscle)?.effort ?? 0;

describe('sharing between muscles', () => {
  it('one joint alone: the multiple is capacity over torque, and all heads together give it (identity)', () => {
    const asked: Demand = { angles: { knee: 70 * radians }, torques: { knee: 100 } };
    const best = atAngle(capacity['knee extension'], 70 * radians);
    const shared = sharedLoad(asked, capacity, 1);
    expect(shared?.multiple).toBeCloseTo(best / 100, 6);
    expect(sharedLoad({ ...asked, torques: { knee: best } }, capacity, 1)?.multiple).toBeCloseTo(
      1,
      6,
    );
  });

  it('two-joint muscles only take away: together the joints never give more than one by one, in any lift', () => {
    for (const { name, rangeDeg } of lifts) {
      const lift = liftNamed(name);
      const range = { lift, from: rangeDeg[0] * radians, to: rangeDeg[1] * radians };
      const load = heaviestLoad(range, person.body, capacity);
      if (load <= 0) continue;
      const { angle, effort } = stickingPoint(range, person.body, capacity, load);
      const asked = demandOf(lift, person.body, load)(angle);
      if ('impossible' in asked) continue;
      const shared = sharedLoad(asked, capacity, 1);
      if (shared) expect(shared.multiple).toBeLessThan(1 / effort + 1e-3 + slack(name));
    }
  });

  it('rectus femoris is favoured by the leg machine, the vasti by squat and leg press (Escamilla 1998, Med Sci Sports Exerc 30:556; direction)', () => {
    const part = (shared: SharedLoad) =>
      effortOf(shared, 'rectus femoris') / effortOf(shared, 'vastus lateralis');
    const machine = part(sharedIn('machine knee extension', 100, 0.4));
    const squat = part(sharedIn('back squat', 115, 0.4));
    expect(machine).toBeGreaterThan(squat);
    console.log(
      `rectus femoris over vastus lateralis: leg machine ${machine.toFixed(2)}, back squat ${squat.toFixed(2)}`,
    );
  });

  it('the Romanian deadlift works hamstrings and gluteus, hardly the vasti (direction; hip extension with knee flexor torque, PMC6323186)', () => {
    const shared = sharedIn('Romanian deadlift', 85, 0.75);
    expect(effortOf(shared, 'biceps femoris long head')).toBeGreaterThan(0.4);
    expect(effortOf(shared, 'vastus lateralis')).toBeLessThan(0.1);
  });
});

/** Lifts whose sticking joint the tables have no muscles for (shoulder) are shared without it. */
function slack(name: string): number {
  const { chain } = liftNamed(name);
  return chain.some(({ joint }) => joint.startsWith('shoulder')) ? Number.POSITIVE_INFINITY : 0;
}
