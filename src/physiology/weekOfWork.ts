import { atAngle, gridDeg } from '../mechanics/angleGrid.ts';
import type { Demand } from '../mechanics/demand.ts';
import type { Lift } from '../mechanics/lift.ts';
import { type ActionName, actions, byAction } from '../tables/actions.ts';
import type { Coefficients } from '../tables/adaptation.ts';
import { muscles } from '../tables/muscles.ts';
import { trainedMuscles } from '../tables/trainedMuscles.ts';
import { agonistPlaces } from './agonists.ts';
import type { Athlete } from './athlete.ts';
import {
  type Contraction,
  type DriveDose,
  DriveWork,
  hardSetSeconds,
  type Moment,
} from './dose.ts';
import type { Sample } from './exercise.ts';
import { drawnOut, muscleScales, shortOrLong, testPosture } from './muscleScales.ts';
import { type MuscleDose, MuscleWork } from './muscleWork.ts';
import { actionsAsked, momentsOf, type Pass, passTension } from './passes.ts';
import { workedAlone } from './workedAlone.ts';

/** What a week's work counts. */
export interface WeekDose {
  readonly drive: Readonly<Record<ActionName, DriveDose>>;
  /** By place among the trained muscles; undefined for those that did nothing. */
  readonly muscles: readonly (MuscleDose | undefined)[];
}

/** Sets of a lift as its practice sees them. */
interface Practised {
  readonly lift: Lift;
  readonly samples: readonly Sample[];
  readonly sets: number;
}

/**
 * The work of a week as it was done, before any coefficient weighs it: what was lifted does not
 * depend on them but through how much strength gained allows, which changes little.
 */
export class WeekOfWork {
  readonly practised: Practised[] = [];
  private readonly drive = new Map<ActionName, Record<Contraction, DriveWork>>();
  private readonly muscles: (MuscleWork | undefined)[] = [];
  private readonly athlete: Athlete;

  constructor(athlete: Athlete) {
    this.athlete = athlete;
  }

  /** Work of one joint by itself, its neighbours as in a test. */
  addAlone(
    action: ActionName,
    moments: readonly Moment[],
    times: number,
    contraction: Contraction,
  ): void {
    this.driveOf(action)[contraction].add(moments, times);
    for (const { angle, seconds, effort, tension = effort, yielded = 0 } of moments) {
      if (effort === 0) continue;
      const { asked, effortOf } = workedAlone(this.athlete, action, angle, effort);
      const at = muscleScales(asked.angles);
      const [one, other] = [angle - yielded / 2, angle + yielded / 2].map((end) =>
        muscleScales(testPosture(action, end)),
      ) as [Scales, Scales];
      for (const place of agonistPlaces(action)) {
        const carried = ((effortOf(place) * tension) / effort) * this.possibleTension(place, asked);
        const drawn = Math.max(drawnOut(one, other, place), drawnOut(other, one, place));
        const x = shortOrLong(at[place] ?? 0);
        const sets = (times * seconds) / hardSetSeconds;
        this.muscleAt(place).add(carried, x, sets, times * drawn);
      }
    }
  }

  /** Passes of a set of a lift, whose muscles share what it asks. */
  addPasses(passes: readonly Pass[], times: number, contraction: Contraction): void {
    for (const action of actionsAsked(passes))
      this.driveOf(action)[contraction].add(momentsOf(action, passes), times);
    const known = new Map<Sample['asked'], Places>();
    const placesAt = ({ asked }: Pass['posture']) => {
      const places = known.get(asked) ?? placesIn(muscleScales(asked.angles));
      known.set(asked, places);
      return places;
    };
    for (const pass of passes) this.pull(pass, placesAt, times);
  }

  private pull(pass: Pass, placesAt: (posture: Pass['posture']) => Places, times: number): void {
    if (pass.seconds === 0) return;
    const { posture, lowering } = pass;
    const at = placesAt(posture);
    const [from, to] = lowering ? [placesAt(lowering.from), placesAt(lowering.to)] : [at, at];
    const sets = (times * pass.seconds) / hardSetSeconds;
    for (let place = 0; place < trainedMuscles.length; place++) {
      const fresh = freshEffort(place, posture);
      if (fresh <= nothing) continue;
      const tension = passTension(pass, fresh) * this.possibleTension(place, posture.asked);
      // Neighbours are two steps apart, and each step is counted at both of its ends.
      const drawn = drawnOut(from.scales, to.scales, place) / 2;
      this.muscleAt(place).add(tension, at.lengths[place] ?? 0, sets, times * drawn);
    }
  }

  /**
   * Fibre tension possible in a posture over its largest, where the muscle works at its home joint;
   * the rectus femoris at the hip alone counts by its effort.
   */
  private possibleTension(place: number, { angles, torques }: Demand): number {
    const home = trainedMuscles[place]?.home;
    if (!home) return 1;
    const { joint, sense } = actions[home];
    if (sense * (torques[joint] ?? 0) <= 0) return 1;
    return atAngle(this.athlete.groups[home].tension, angles[joint] ?? 0);
  }

  private driveOf(action: ActionName): Record<Contraction, DriveWork> {
    const own = this.drive.get(action) ?? { dynamic: new DriveWork(), isometric: new DriveWork() };
    this.drive.set(action, own);
    return own;
  }

  private muscleAt(place: number): MuscleWork {
    this.muscles[place] ??= new MuscleWork();
    return this.muscles[place];
  }

  /** What it counts with given coefficients. */
  dose(c: Coefficients): WeekDose {
    const ofAction = (action: ActionName): DriveDose => {
      const own = this.drive.get(action);
      if (!own) return noDrive;
      const { tension } = this.athlete.groups[action];
      return {
        dynamic: own.dynamic.dose(tension, c),
        isometric: own.isometric.dose(tension, c),
      };
    };
    const ofMuscle = (_: unknown, place: number) => this.muscles[place]?.dose(c);
    return { drive: byAction(ofAction), muscles: trainedMuscles.map(ofMuscle) };
  }
}

const none = gridDeg.map(() => 0);
const noDrive: DriveDose = { dynamic: none, isometric: none };

type Scales = Float64Array;

/** Places of the muscles on their scales in a posture, and whether they are short or long there. */
interface Places {
  readonly scales: Scales;
  readonly lengths: Float64Array;
}

const placesIn = (scales: Scales): Places => ({ scales, lengths: scales.map(shortOrLong) });

/** Effort below which a muscle is taken to rest: rounding of the shared solution. */
const nothing = 1e-6;

/** Effort of a trained muscle in a posture, fresh; one that the tables lack works as its action. */
function freshEffort(place: number, { muscles: shared, effort }: Pass['posture']): number {
  const home = trainedMuscles[place]?.home;
  return (place < muscles.length ? shared[place] : home && effort[home]) ?? 0;
}
