import { liftFactors } from '../../src/inference/calibrateLifts.ts';
import { type Athlete, athleteOf } from '../../src/physiology/athlete.ts';
import { bodyOf } from '../../src/physiology/body.ts';
import { lifts } from '../../src/tables/lifts.ts';

const sizes = { male: [1.78, 78], female: [1.65, 62], pooled: [1.72, 70] } as const;

/** A person of the tables’ mean strength; sizes are round working values. */
export function meanPerson(reference: 'male' | 'female' | 'pooled', trained: boolean): Athlete {
  const [stature, mass] = sizes[reference];
  const body = bodyOf({ reference, stature, mass, lengths: {}, limits: {} });
  return athleteOf({
    body,
    reference,
    mass,
    trained,
    strengths: {},
    liftFactors: liftFactors([], lifts),
  });
}
