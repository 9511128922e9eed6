import { describe, expect, it } from 'vitest';
import { atAngle } from '../../src/mechanics/angleGrid.ts';
import type { Demand } from '../../src/mechanics/demand.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { demandsOver, heaviestLoad, stickingPoint } from '../../src/physiology/heaviestLoad.ts';
import { hardest, jointEfforts } from '../../src/physiology/jointEfforts.ts';
import { muscleTorques, sharedJoints } from '../../src/physiology/muscleTorques.ts';
import { leastEffort, sharedLoad } from '../../src/physiology/sharing.ts';
import { restingCapacity } from '../../src/physiology/trainedState.ts';
import { actions } from '../../src/tables/actions.ts';
import { liftNamed, lifts } from '../../src/tables/lifts.ts';
import { muscles } from '../../src/tables/muscles.ts';
import { meanPerson } from '../studies/meanPerson.ts';

const person = meanPerson('male', true);
const capacity = restingCapacity(person);

/** Postures of a lift over its range, with a share of its heaviest load. */
function posturesOf(name: string, share: number, toDeg?: number): Demand[] {
  const lift = liftNamed(name);
  const [from, to] = [lift.rangeDeg[0], toDeg ?? lift.rangeDeg[1]];
  const range = { lift, from: toRadians(from), to: toRadians(to) };
  const load = share * heaviestLoad(range, person.body, capacity).load;
  return demandsOver(range, person.body, load).flatMap(({ asked }) =>
    'impossible' in asked ? [] : [asked],
  );
}

/** Share of its best that a muscle gives in the last posture of a range. */
function effortAtEnd(name: string, toDeg: number, share: number, muscle: string): number {
  const asked = posturesOf(name, share, toDeg).at(-1);
  if (!asked) throw new Error(`no posture of ${name}`);
  return sharedLoad(asked, capacity).muscles[muscles.findIndex((m) => m.name === muscle)] ?? 0;
}

describe('torque of each muscle', () => {
  it('all muscles of an action together give its strength, in every posture of every lift (identity)', () => {
    for (const { name } of lifts)
      for (const asked of posturesOf(name, 0.5)) {
        const torques = muscleTorques(asked, capacity);
        for (const [action, { joint, sense }] of Object.entries(actions)) {
          const angle = asked.angles[joint];
          const shared = sharedJoints.find((shares) => shares === joint);
          // The bent knee takes from the calf: it has a test of its own.
          if (!shared || angle === undefined || joint === 'ankle') continue;
          const all = torques[shared].reduce((sum, torque) => sum + Math.max(sense * torque, 0), 0);
          const best = atAngle(capacity[action as keyof typeof capacity], angle);
          expect(all / best, `${name}, ${action}`).toBeCloseTo(1, 9);
        }
      }
  });

  it('a muscle pulls with one force at both its ends: its torques are as its levers (identity)', () => {
    const asked: Demand = { angles: { ankle: 0.2, knee: 1.2, hip: 1 }, torques: {} };
    const { knee, hip } = muscleTorques(asked, capacity);
    const i = muscles.findIndex(({ name }) => name === 'semitendinosus');
    // Levers: 45 mm at the knee; 56 mm at the hip in neutral times 1.14 at 57° (tables, spline).
    expect((hip[i] ?? 0) / -(knee[i] ?? 1)).toBeCloseTo((56 * 1.149) / 45, 1);
  });
});

describe('sharing between muscles', () => {
  it('one joint alone: effort is torque over capacity (identity)', () => {
    const best = atAngle(capacity['knee extension'], toRadians(70));
    const asked: Demand = { angles: { knee: toRadians(70) }, torques: { knee: 0.4 * best } };
    expect(leastEffort(asked, capacity)).toBeCloseTo(0.4, 9);
    expect(sharedLoad(asked, capacity).actions['knee extension']).toBeCloseTo(0.4, 9);
    expect(sharedLoad(asked, capacity, 0.5).actions['knee extension']).toBeCloseTo(0.8, 9);
  });

  it('muscles over two joints only take away, and nowhere so much that the search for the sticking point could miss it (all lifts)', () => {
    const ties: number[] = [];
    for (const { name } of lifts)
      for (const share of [0.3, 1])
        for (const asked of posturesOf(name, share)) {
          const alone = hardest(jointEfforts(asked, capacity))?.effort;
          if (alone) ties.push(leastEffort(asked, capacity) / alone);
        }
    expect(Math.min(...ties)).toBeGreaterThan(1 - 1e-6);
    expect(Math.max(...ties)).toBeLessThan(1.45);
  });

  it('the heaviest load is the one at which no posture asks more than all, and one asks all', () => {
    for (const { name, rangeDeg } of lifts) {
      const lift = liftNamed(name);
      const range = { lift, from: toRadians(rangeDeg[0]), to: toRadians(rangeDeg[1]) };
      const load = heaviestLoad(range, person.body, capacity).load;
      if (load === 0) continue;
      const efforts = posturesOf(name, 1).map((asked) => leastEffort(asked, capacity));
      expect(Math.max(...efforts), name).toBeCloseTo(1, 5);
      expect(stickingPoint(range, person.body, capacity, load).effort, name).toBeCloseTo(1, 5);
    }
  });

  it('what cannot be carried is told by how much: efforts of the heaviest part, times the excess', () => {
    const [asked] = posturesOf('back squat', 1, 100).slice(-1);
    if (!asked) throw new Error('no posture');
    const doubled = {
      angles: asked.angles,
      torques: Object.fromEntries(
        Object.entries(asked.torques).map(([joint, torque]) => [joint, 2 * torque]),
      ),
    };
    const most = hardest(sharedLoad(doubled, capacity).actions)?.effort ?? 0;
    expect(most).toBeCloseTo(2 * leastEffort(asked, capacity), 4);
  });

  it('over a whole lift rectus femoris is favoured by the leg machine, the vasti by squat and leg press (Escamilla 1998, Med Sci Sports Exerc 30:556; direction)', () => {
    const worked = (lift: string, toDeg: number, muscle: string) => {
      const place = muscles.findIndex(({ name }) => name === muscle);
      return posturesOf(lift, 0.6, toDeg).reduce(
        (sum, asked) => sum + (sharedLoad(asked, capacity).muscles[place] ?? 0),
        0,
      );
    };
    const part = (lift: string, toDeg: number) =>
      worked(lift, toDeg, 'rectus femoris') / worked(lift, toDeg, 'vastus lateralis');
    const machine = part('machine knee extension', 90);
    expect(machine).toBeGreaterThan(part('back squat', 90));
    expect(machine).toBeGreaterThan(part('leg press', 90));
  });

  it('the Romanian deadlift works hamstrings and gluteus, hardly the vasti (direction; hip extension with knee flexor torque, PMC6323186)', () => {
    expect(effortAtEnd('Romanian deadlift', 85, 0.75, 'biceps femoris long head')).toBeGreaterThan(
      0.4,
    );
    expect(effortAtEnd('Romanian deadlift', 85, 0.75, 'vastus lateralis')).toBeLessThan(0.1);
  });
});
