import type { ActionName } from './actions.ts';
import type { Sourced } from './sourced.ts';
import { strengthCurves } from './strength.ts';

/**
 * How one person's strength curve may differ from the mean person's: one standard deviation each,
 * on log torque. Size, place (the whole curve moved along the angle), tilt (per 40° from the
 * middle), a smooth residual by angle that those three leave out, and the continued ends.
 */
export interface StrengthSpread {
  readonly logScale: number;
  readonly shiftDeg: number;
  readonly tilt: number;
  readonly middleDeg: number;
  readonly residual: SpreadByAngle;
  /** Parts of the curve continued beyond what was measured, each wrong in its own way. */
  readonly continued: readonly SpreadByAngle[];
}

interface SpreadByAngle {
  readonly anglesDeg: readonly number[];
  readonly log: readonly number[];
}

/**
 * Knee extension. Size: between persons 20–25 % (Šarabon 2021). Place of the peak: 57–80° across
 * studies, so 8°. Tilt: 12 % at 20° (Marginson and Eston 2001, 4.3 of 35.2). Residual: at 100° the
 * spread of `kneeExtensionShape` is wider than place and tilt explain, by √(spread² − place² − tilt²)
 * = √(0.17² − 0.13² − 0.08²) = 0.08 (place: half the change of log torque over 16°); from 20° to 80°
 * they explain all of it, but not that persons differ in other ways too, so 0.08 everywhere. Beyond
 * the measured angles what is left, 0.38 at 0°, 0.21 at 110°, 0.30 at 125° and 0.29 at 150°, less
 * that 0.08, is the spread of a continuation by eye, which no test inside the range can tell.
 */
const kneeExtensionSpread: StrengthSpread = {
  logScale: 0.22,
  shiftDeg: 8,
  tilt: 0.1,
  middleDeg: 70,
  residual: { anglesDeg: [100], log: [0.08] },
  continued: [
    { anglesDeg: [0, 20], log: [0.37, 0] },
    { anglesDeg: [100, 110, 125, 150], log: [0, 0.19, 0.29, 0.28] },
  ],
};

/**
 * The other actions: size from their own rows; nothing was read on how persons differ in shape, so
 * the place is as unsure as the knee's, and 15 % for the rest of the shape (working value) is split
 * evenly between tilt and residual.
 */
function borrowedSpread(action: Exclude<ActionName, 'knee extension'>): StrengthSpread {
  const { perKg, atDeg } = strengthCurves[action];
  return {
    logScale: perKg.pooled.spread / perKg.pooled.value,
    shiftDeg: 8,
    tilt: 0.1,
    middleDeg: atDeg,
    residual: { anglesDeg: [atDeg], log: [0.1] },
    continued: [],
  };
}

/** How persons differ in one action. */
export function strengthSpread(action: ActionName): StrengthSpread {
  return action === 'knee extension' ? kneeExtensionSpread : borrowedSpread(action);
}

/**
 * Degrees over which the residual changes: two angles this far apart still share most of it
 * (correlation 0.78), three times as far hardly any (0.11). Nothing is published; about the step
 * between the angles of published curves.
 */
export const residualReachDeg: Sourced = {
  value: 20,
  unit: 'deg',
  spread: 7,
  known: 'prior',
  source: 'step between the angles of published curves',
};
