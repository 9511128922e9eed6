import { gridDeg, type OverAngles } from '../mechanics/angleGrid.ts';
import type { Body } from '../mechanics/posture.ts';
import { piecewiseLinear } from '../numeric/interpolation.ts';
import { type ActionName, byAction } from '../tables/actions.ts';
import { specificTension } from '../tables/quadriceps.ts';
import { coactivation, neuralDrive, trainedFromYears } from '../tables/strength.ts';
import { tableTorque } from './agonists.ts';
import type { Range } from './heaviestLoad.ts';
import { muscleNamed, tendonArmAt } from './muscleGeometry.ts';
import { meanStrength, ownTorque, type Reference, type Strengths } from './strengthCurve.ts';

/**
 * Muscles that turn one joint one way: their largest isometric torque by angle before training, and
 * the tension of their fibres there.
 */
export interface MuscleGroup {
  readonly action: ActionName;
  /** N·m, one side. */
  readonly torque: OverAngles;
  /** Fibre force at full effort over its largest value, 0 to 1. */
  readonly tension: OverAngles;
}

/** One person as the model sees them. */
export interface Athlete {
  readonly body: Body;
  readonly trained: boolean;
  /** Gains of this athlete over those of the model's person of this kind. */
  readonly response: number;
  readonly groups: Readonly<Record<ActionName, MuscleGroup>>;
  /** Strength shown in a lift over the strength of the torque curves, by lift; 1 if not there. */
  readonly liftFactors: LiftFactors;
}

/**
 * For each lift the effort that a tested single asks by the torque curves alone, by the end of its
 * range (radians, rising).
 */
export type LiftFactors = Readonly<
  Record<string, readonly { readonly to: number; readonly factor: number }[]>
>;

/** Strength factor of a lift over a range, by its end: between tested ends by straight lines, else the nearest. */
export function liftFactor(athlete: Athlete, { lift, to }: Range): number {
  const known = athlete.liftFactors[lift.name];
  if (!known || known.length === 0) return 1;
  return piecewiseLinear(
    known.map((entry) => entry.to),
    known.map((entry) => entry.factor),
  )(to);
}

/**
 * What the muscle tables alone give in a knee extension, N·m by angle: specific tension × drive ×
 * the muscles' torque a unit of stress, less the antagonists.
 */
export function tableKneeExtension(trained: boolean): OverAngles {
  const stress = specificTension.value * neuralDrive[trained ? 'trained' : 'untrained'].value;
  return tableTorque('knee extension').map((torque) => stress * torque * (1 - coactivation.value));
}

/**
 * Builds an athlete from body and strength.
 *
 * The ratio of the measured curve to the muscle tables is a residual: whatever
 * the tables do not explain stays as measured, and training acts through the muscles' ratio of
 * changed to unchanged torque.
 */
export function athleteOf(person: {
  readonly body: Body;
  readonly reference: Reference;
  readonly mass: number;
  readonly trained: boolean;
  /** 1 if left out. */
  readonly response?: number;
  /** Strength against the mean person's, where tested. */
  readonly strengths: Strengths;
  readonly liftFactors: LiftFactors;
}): Athlete {
  const { reference, mass, strengths } = person;
  const torqueOf = (action: ActionName) =>
    gridDeg.map((deg) =>
      ownTorque(action, reference, mass, strengths[action] ?? meanStrength, deg),
    );
  const kneeTorque = torqueOf('knee extension');
  const vastus = muscleNamed('vastus lateralis');
  const fibreForce = gridDeg.map(
    (deg, i) => (kneeTorque[i] ?? 0) / -tendonArmAt(vastus, 'knee', deg),
  );
  const largest = Math.max(...fibreForce);
  const knee: MuscleGroup = {
    action: 'knee extension',
    torque: kneeTorque,
    tension: fibreForce.map((force) => force / largest),
  };
  const groupOf = (action: ActionName) =>
    action === 'knee extension' ? knee : curveGroup(action, torqueOf(action));
  return {
    body: person.body,
    trained: person.trained,
    response: person.response ?? 1,
    liftFactors: person.liftFactors,
    groups: byAction(groupOf),
  };
}

/** A group known only by the strength curve of its action, its fibres' tension taken as even. */
function curveGroup(action: ActionName, torque: OverAngles): MuscleGroup {
  return { action, torque, tension: gridDeg.map(() => 1) };
}

/** Whether training years count as trained. */
export function isTrained(years: number): boolean {
  return years >= trainedFromYears;
}
