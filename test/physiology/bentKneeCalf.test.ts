import { expect, it } from 'vitest';
import { demandOf } from '../../src/mechanics/demand.ts';
import { jointEfforts } from '../../src/physiology/jointEfforts.ts';
import { restingCapacity } from '../../src/physiology/trainedState.ts';
import { liftNamed } from '../../src/tables/lifts.ts';
import { meanPerson } from '../studies/meanPerson.ts';

it('a seated calf raise has 0.60 to 0.94 of the straight-legged calf (PMID 39577118; Fugl-Meyer 1980)', () => {
  const person = meanPerson('male', true);
  const capacity = restingCapacity(person);
  const lift = liftNamed('seated calf raise');
  const seated = demandOf(lift, person.body, 60)(0);
  if ('impossible' in seated) throw new Error(seated.impossible);
  const straight = { ...seated, angles: { ...seated.angles, knee: 0 } };
  const [bent = 0, extended = 0] = [seated, straight].map(
    (asked) => jointEfforts(asked, capacity)['ankle plantarflexion'],
  );
  expect(extended / bent).toBeGreaterThanOrEqual(0.6);
  expect(extended / bent).toBeLessThanOrEqual(0.94);
});
