import { standardGravity } from '../mechanics/forces.ts';
import type { Lift } from '../mechanics/lift.ts';
import { toRadians } from '../numeric/degrees.ts';
import { type ActionName, isAction } from '../tables/actions.ts';
import { liftNamed } from '../tables/lifts.ts';
import { type Athlete, liftFactor } from './athlete.ts';
import { heaviestLoad, stickingPoint } from './heaviestLoad.ts';
import type { PlannedExercise } from './planProgram.ts';
import { restingCapacity } from './trainedState.ts';
import type { WrittenHold } from './writtenProgram.ts';

/** The load of a held lift, kg, and the effort it asks; more than wanted if the body alone asks it. */
export interface HeldLoad {
  readonly load: number;
  /** The weight of the load, N: what a bar that cannot move is pushed with. */
  readonly push: number;
  readonly effort: number;
  /** The action that it asks most, where it asks any. */
  readonly action?: ActionName;
  readonly state: 'found' | 'unbalanced' | 'nothing asked' | 'too heavy';
  /** Heaviest single over all that this body can do of the lift, kg; 0 if it cannot be balanced. */
  readonly fullSingle: number;
}

/** Plans a hold: of a lift with the load that asks the effort, or of an action. */
export function planHold(
  work: WrittenHold,
  athlete: Athlete,
  catalogue: readonly Lift[],
): PlannedExercise {
  const { at, effort, sets, reps, seconds } = work;
  const common = { kind: 'hold', at, effort, sets, reps, seconds } as const;
  if (isAction(work.of))
    return {
      exercise: { ...common, of: { action: work.of } },
      samples: [],
      oneSided: false,
      tested: false,
    };
  const lift = liftNamed(work.of, catalogue);
  const range = { lift, from: at, to: at };
  const strength = liftFactor(athlete, range);
  const capacity = restingCapacity(athlete);
  const load = heaviestLoad(range, athlete.body, capacity, effort * strength).load;
  const { effort: most, action } = stickingPoint(range, athlete.body, capacity, load);
  const reached = most / strength;
  return {
    exercise: { ...common, of: { range, load } },
    samples: [],
    hold: {
      load,
      push: load * standardGravity,
      effort: reached,
      ...(reached > 0 && Number.isFinite(reached) ? { action } : {}),
      state: holdState(reached, effort),
      fullSingle: fullSingle(lift, athlete),
    },
    oneSided: lift.sides === 1,
    tested: false,
  };
}

/** Heaviest single of a lift over its range in the catalogue, as far as the knee bends, kg. */
function fullSingle(lift: Lift, athlete: Athlete): number {
  const [from = 0, end = 0] = lift.rangeDeg.map(toRadians);
  const to = lift.leading === 'knee' ? Math.min(end, athlete.body.limits.knee) : end;
  const range = { lift, from, to };
  const strength = liftFactor(athlete, range);
  return heaviestLoad(range, athlete.body, restingCapacity(athlete), strength).load;
}

function holdState(reached: number, wanted: number): HeldLoad['state'] {
  if (!Number.isFinite(reached)) return 'unbalanced';
  if (reached > 1.001) return 'too heavy';
  return reached > wanted - 0.01 ? 'found' : 'nothing asked';
}
