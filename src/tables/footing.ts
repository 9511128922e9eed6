import type { Lift } from '../mechanics/lift.ts';

/** Where lifts off the feet stand above the floor, for chains and bands; benches are guesses. */
type Footing = NonNullable<Lift['aboveFloor']>;

export const standing: Footing = {
  metres: 'shoulder of someone standing',
  assumed: 'the lifter stands upright on the floor',
};
export const onBench: Footing = {
  metres: 0.54,
  assumed: 'the bench is 45 cm high and the shoulder joint lies 9 cm above it (a guess)',
};
export const onFloor: Footing = {
  metres: 0.09,
  assumed: 'the shoulder joint lies 9 cm above the floor (a guess)',
};
