import { describe, expect, it } from 'vitest';
import type { Lift } from '../../src/mechanics/lift.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { stickingPoint } from '../../src/physiology/heaviestLoad.ts';
import { restingCapacity } from '../../src/physiology/trainedState.ts';
import { liftNamed } from '../../src/tables/lifts.ts';
import { loweringStrength } from '../../src/tables/movingStrength.ts';
import { meanPerson } from '../studies/meanPerson.ts';

/** The lowering with the shanks on a board that rises by so many degrees toward the knees. */
function onSlope(slopeDeg: number): Lift {
  const flat = liftNamed('Nordic lowering');
  return { ...flat, supportDirectionDeg: flat.supportDirectionDeg - slopeDeg };
}

/** Knee flexion at which the mean trained man can no longer resist: effort 1 while lowering. */
function breakPoint(slopeDeg: number): number {
  const { body, ...person } = meanPerson('male', true);
  const capacity = restingCapacity({ body, ...person });
  for (let deg = 80; deg > 0; deg -= 0.5) {
    const range = { lift: onSlope(slopeDeg), from: toRadians(deg), to: toRadians(deg) };
    const { effort } = stickingPoint(range, body, capacity, 0);
    if (effort > loweringStrength.value) return deg;
  }
  return 0;
}

describe('break point of the Nordic lowering: statics and published knee flexion strength against a measurement neither has seen', () => {
  it.each([
    [0, 58],
    [20, 36],
    [40, 16],
  ])(
    'shank slope %d°: %d° of knee flexion (J Sports Sci Med 2021, 20:216), within 10°',
    (slope, published) => {
      const predicted = breakPoint(slope);
      console.log(`Nordic on ${slope}°: breaks at ${predicted}° | published ${published}°`);
      expect(Math.abs(predicted - published)).toBeLessThan(10);
    },
  );
});
