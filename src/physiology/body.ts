import type { SegmentBody } from '../mechanics/linkage.ts';
import type { Body } from '../mechanics/posture.ts';
import { toRadians } from '../numeric/degrees.ts';
import {
  ankleFromHeelShare,
  defaultLimitsDeg,
  deLeva,
  dempster,
  lengthShares,
} from '../tables/segments.ts';

export interface BodyMeasures {
  readonly reference: 'female' | 'male' | 'pooled';
  /** Metres and kilograms. */
  readonly stature: number;
  readonly mass: number;
  readonly lengths: Readonly<Partial<Record<'thigh' | 'shank' | 'trunk' | 'foot', number>>>;
  /** Radians. */
  readonly limits: Readonly<Partial<Record<'ankle dorsiflexion' | 'knee flexion', number>>>;
}

/**
 * Segment lengths, masses and mass centres of one person.
 *
 * Lengths: measured, else a share of stature (Drillis and Contini 1966). Masses and centres: de
 * Leva 1996 by sex, or Dempster by Winter 2009 when pooled. The arms are carried as a mass at
 * shoulder height, because in the lifts covered the hands hold a bar there.
 */
export function bodyOf(person: BodyMeasures): Body {
  const { stature, mass, lengths } = person;
  const length = (name: 'thigh' | 'shank' | 'trunk' | 'foot') =>
    lengths[name] ?? lengthShares[name] * stature;
  const rows = person.reference === 'pooled' ? pooledRows() : sexRows(person.reference);
  const foot = length('foot');
  const segment = (l: number, row: { mass: number; centre: number }): SegmentBody => ({
    length: l,
    mass: row.mass * mass,
    centre: row.centre,
  });
  const shank = segment(length('shank'), rows.shank);
  const footMass = rows.foot.mass * mass;
  // Foot square to the shank, its mass taken on the shank's line at ankle height.
  const shankAndFoot: SegmentBody = {
    length: shank.length,
    mass: shank.mass + footMass,
    centre: (shank.mass * shank.centre + footMass) / (shank.mass + footMass),
  };
  return {
    segments: {
      foot: segment(foot, rows.foot),
      shank,
      'shank and foot': shankAndFoot,
      thigh: segment(length('thigh'), rows.thigh),
      'trunk, head and arms': segment(length('trunk'), rows.upper),
      'trunk and head': segment(length('trunk'), rows.headAndTrunk),
      'upper arm': segment(lengthShares.upperArm * stature, rows.upperArm),
      'forearm and hand': segment(
        (lengthShares.forearm + lengthShares.handToGrip) * stature,
        rows.forearmAndHand,
      ),
    },
    footLength: foot,
    ankleFromHeel: ankleFromHeelShare * foot,
    footCentreFromHeel: rows.foot.centre * foot,
    ankleHeight: lengthShares.ankleHeight * stature,
    limits: {
      ankle: person.limits['ankle dorsiflexion'] ?? toRadians(defaultLimitsDeg.ankle),
      knee: person.limits['knee flexion'] ?? toRadians(defaultLimitsDeg.knee),
    },
  };
}

/** Which lengths were estimated from stature. */
export function estimatedLengths(person: BodyMeasures): string[] {
  const names = ['thigh', 'shank', 'trunk', 'foot'] as const;
  return names.filter((name) => person.lengths[name] === undefined);
}

function sexRows(reference: 'female' | 'male') {
  const t = deLeva[reference];
  const arms = 2 * (t['upper arm'].mass + t.forearm.mass + t.hand.mass);
  const trunkMass = t.head.mass + t.trunk.mass;
  const fromHip = (trunkMass * dempster.headTrunkCentreFromHip + arms * 1) / (trunkMass + arms);
  const { forearm, handToGrip } = lengthShares;
  // Centre of forearm and hand along the line from the elbow to the grip.
  const along =
    (t.forearm.mass * t.forearm.centre * forearm + t.hand.mass * (forearm + handToGrip)) /
    ((t.forearm.mass + t.hand.mass) * (forearm + handToGrip));
  return {
    thigh: t.thigh,
    shank: t.shank,
    foot: t.foot,
    upper: { mass: trunkMass + arms, centre: 1 - fromHip },
    headAndTrunk: { mass: trunkMass, centre: 1 - dempster.headTrunkCentreFromHip },
    upperArm: t['upper arm'],
    forearmAndHand: { mass: t.forearm.mass + t.hand.mass, centre: along },
  };
}

function pooledRows() {
  const { thigh, shank, foot, headTrunkArms, headTrunk, upperArm, forearmAndHand } = dempster;
  return {
    thigh,
    shank,
    foot,
    upper: headTrunkArms,
    headAndTrunk: { mass: headTrunk, centre: 1 - dempster.headTrunkCentreFromHip },
    upperArm,
    forearmAndHand,
  };
}
