import type { Lift } from '../mechanics/lift.ts';
import { toRadians } from '../numeric/degrees.ts';
import type { WrittenLift } from './writtenProgram.ts';

/** A single the athlete has really lifted: range in radians, by default from its first angle; kg. */
export interface MeasuredSingle {
  readonly lift: string;
  readonly from?: number;
  readonly to: number;
  readonly best: number;
}

/** Where the range of a tested single begins, radians: the first angle of the lift. */
export function firstAngle(lift: Lift): number {
  return toRadians(lift.rangeDeg[0]);
}

/**
 * Whether a program's range is the one a single was tested over: ends within 1° and 10°, and no
 * chains or bands, because singles are tested with the plain bar.
 */
export function isTestedRange(single: MeasuredSingle, work: WrittenLift, lift: Lift): boolean {
  return (
    single.lift === work.lift &&
    work.chains === undefined &&
    work.bands === undefined &&
    Math.abs(single.to - work.to) < toRadians(1) &&
    Math.abs((single.from ?? firstAngle(lift)) - work.from) < toRadians(10)
  );
}
