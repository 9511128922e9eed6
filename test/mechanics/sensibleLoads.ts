import type { Lift } from '../../src/mechanics/lift.ts';

/**
 * A load a trained man of 80 kg might use, kg, as a share of body mass; round working values, only
 * so that the whole catalogue can be tried at loads of the right size.
 */
const shares: Readonly<Record<string, number>> = {
  'goblet squat': 0.4,
  'split squat': 0.6,
  'rear-foot raised split squat': 0.6,
  'step-up': 0.5,
  'single-leg Romanian deadlift': 0.5,
  'good morning': 0.7,
  '45-degree back extension': 0.25,
  'horizontal back extension': 0.25,
  'hip flexor raise': 0.12,
  'cable hip flexor raise': 0.2,
  'machine knee extension': 0.8,
  'hung-weight knee extension': 0.3,
  'leg press': 2.5,
  'leg-press calf raise': 2,
  'seated leg curl': 0.7,
  'lying leg curl': 0.6,
  'Nordic lowering': 0,
  'Nordic lowering on a slope': 0,
  'single-leg calf raise': 0.3,
  'chin-up': 0.15,
  'bench press': 1,
  'close-grip bench press': 0.9,
  'floor press': 0.9,
  'dumbbell fly': 0.4,
  'overhead press': 0.6,
  'front raise': 0.2,
  'lateral raise': 0.2,
};

/** Kilograms for a lifter of this body mass; small arm lifts a third, standing lifts 1.2 of it. */
export function sensibleLoad(lift: Lift, bodyMass: number): number {
  const usual = /curl|triceps/.test(lift.name) ? 0.35 : 1.2;
  return bodyMass * (shares[lift.name] ?? usual);
}
