import { type Lift, type Segment, segmentNames } from './lift.ts';
import type { AttachedLoad, SegmentBody } from './linkage.ts';
import type { Body } from './posture.ts';

/** What a lift moves of the body and hangs on it. */

/** Heel to the ball of the foot as a share of foot length: a working value, no table read. */
const ballFromHeelShare = 0.72;

/** The foot as the lever from the ankle joint to the ball under it, its mass centre along it. */
function footLever(body: Body): SegmentBody {
  const forward = ballFromHeelShare * body.footLength - body.ankleFromHeel;
  return {
    mass: body.segments.foot.mass,
    length: Math.hypot(forward, body.ankleHeight),
    centre: (body.footCentreFromHeel - body.ankleFromHeel) / forward,
  };
}

/** Masses of what moves: limbs of the working sides; of the trunk the working share. */
export function working(body: Body, lift: Lift): Readonly<Record<Segment, SegmentBody>> {
  const share = lift.workingShare ?? 1;
  const segments = { ...body.segments, foot: footLever(body) };
  const scaled: Record<Segment, SegmentBody> = { ...segments };
  for (const name of segmentNames) {
    const times = name.startsWith('trunk') ? share : lift.sides;
    scaled[name] = { ...segments[name], mass: segments[name].mass * times };
  }
  return scaled;
}

/** The load where it is a mass, and a free leg hanging from the hip. */
export function carried(lift: Lift, body: Body, load: number): AttachedLoad[] {
  const { resistance, workingShare = 1 } = lift;
  const loads: AttachedLoad[] = [];
  if (resistance.kind === 'mass') loads.push({ ...resistance, mass: load * workingShare });
  if (lift.freeLeg) {
    const mass = body.segments.thigh.mass + body.segments['shank and foot'].mass;
    loads.push({ on: 'thigh', along: 1, across: 0, mass: mass * workingShare });
  }
  return loads;
}
