import { describe, expect, it } from 'vitest';
import type { Lift } from '../../src/mechanics/lift.ts';
import { Stance } from '../../src/mechanics/posture.ts';
import { toDegrees, toRadians } from '../../src/numeric/degrees.ts';
import { angleAtHeight, type Height } from '../../src/physiology/heights.ts';
import { liftNamed, lifts } from '../../src/tables/lifts.ts';
import { man } from '../mechanics/askLift.ts';

/** A back squat whose shank leans 30° forward at every depth, so that it can be worked by hand. */
const leaning: Lift = {
  ...liftNamed('back squat'),
  rangeDeg: [40, 150],
  follow: [
    { joint: 'ankle', rule: 'linear', fromDeg: 30, perLeading: 0 },
    { joint: 'hip', rule: 'balance' },
  ],
};

function found(lift: Lift, height: Height, load = 80, body = man) {
  const [first, last] = lift.rangeDeg;
  const stretch = [toRadians(first), toRadians(last)] as const;
  const answer = angleAtHeight(lift, body, height, { known: load, usual: load }, stretch);
  if (answer.state !== 'found') throw new Error(`${lift.name}: ${answer.state}`);
  return { deg: toDegrees(answer.angle), hip: answer.hip };
}

// The man is 1.80 m: ankle 0.039, shank 0.246, thigh 0.245, trunk 0.288 and arm to the grip
// 0.186 + 0.146 + 0.054 of stature (Drillis and Contini 1966). Angles are given to 0.1°.
const [ankle, shank, thigh, trunk, arm] = [0.039, 0.246, 0.245, 0.288, 0.386].map(
  (l) => l * 1.8,
) as [number, number, number, number, number];

describe('heights worked by hand, 1.80 m, shank leaning 30°', () => {
  it('thigh level: hip joint 0.454 m high, knee bent 120°', () => {
    // 0.0702 + 0.4428 · cos 30° = 0.4537; knee flexion = 90° + shank lean − thigh elevation.
    const { deg, hip } = found(leaning, { kind: 'thigh level' });
    expect(hip).toBeCloseTo(0.4537, 4);
    expect(deg).toBeCloseTo(120, 1);
  });

  it('the box under it is 0.36 to 0.37 m high', () => {
    // A hip joint 8 to 9 cm above the seat: 0.4537 − 0.085 = 0.3687.
    expect(found(leaning, { kind: 'box', height: 0.3687 }).deg).toBeCloseTo(120, 0.5);
    expect(found(leaning, { kind: 'box', height: 0.36 }).deg).toBeGreaterThan(120);
    expect(found(leaning, { kind: 'box', height: 0.38 }).deg).toBeLessThan(120);
  });

  it.each([0.3, 0.42, 0.5, 0.6])(
    'box of %f m: knee flexion = 90° + shank lean − thigh elevation',
    (height) => {
      const rise = height + 0.085 - ankle - shank * Math.cos(toRadians(30));
      const elevation = toDegrees(Math.asin(rise / thigh));
      const { deg, hip } = found(leaning, { kind: 'box', height });
      expect(hip).toBeCloseTo(height + 0.085, 5);
      expect(Math.abs(deg - (90 + 30 - elevation))).toBeLessThan(0.051);
    },
  );

  it('a bar in hanging hands, legs straight and upright: shoulder height less the arms', () => {
    const stiff: Lift = {
      ...liftNamed('deadlift'),
      follow: [
        { joint: 'knee', rule: 'linear', fromDeg: 0, perLeading: 0 },
        { joint: 'ankle', rule: 'linear', fromDeg: 0, perLeading: 0 },
      ],
    };
    // 0.5 = 0.0702 + 0.4428 + 0.441 + 0.5184 · cos q − 0.6948, so cos q = 0.4645 and q = 62.3°.
    const cosine = (0.5 + arm - ankle - shank - thigh) / trunk;
    expect(cosine).toBeCloseTo(0.4645, 3);
    const { deg } = found(stiff, { kind: 'pins', height: 0.5 });
    expect(Math.abs(deg - toDegrees(Math.acos(cosine)))).toBeLessThan(0.051);
  });

  it('a bar on the shoulders: hip height and the trunk’s rise, less what lies behind it', () => {
    const upright: Lift = {
      ...leaning,
      follow: [
        { joint: 'ankle', rule: 'linear', fromDeg: 30, perLeading: 0 },
        { joint: 'hip', rule: 'direction', deg: 40 },
      ],
    };
    // Thigh level, trunk leaning 40°: 0.4537 + 0.5184 · cos 40° + 0.05 · sin 40° = 0.8830.
    const { deg } = found(upright, { kind: 'pins', height: 0.883 });
    expect(Math.abs(deg - 120)).toBeLessThan(0.1);
  });
});

const standing = lifts.filter(({ support }) => support === 'feet');

describe('angle to height and back', () => {
  it.each(standing.map((lift) => [lift.name, lift] as const))('%s', (_, lift) => {
    const stance = new Stance(lift, man, 60);
    let trips = 0;
    // Nearly straight, hips and bar hardly fall: heights there tell no angle.
    for (let deg = 45; deg <= Math.min(lift.rangeDeg[1], 135); deg += 7.5) {
      const held = stance.posture(toRadians(deg));
      if ('impossible' in held) continue;
      const hip = held.placement.links.find(({ link }) => link.joint === 'hip')?.start.y ?? 0;
      const back = found(lift, { kind: 'box', height: hip - 0.085 }, 60);
      // A good morning moves the hips by millimetres only; a millionth of a metre is its grain.
      expect(Math.abs(back.deg - deg)).toBeLessThan(0.06);
      trips++;
    }
    expect(trips).toBeGreaterThan(3);
  });

  const barred = standing.filter(
    ({ resistance }) => resistance.kind === 'mass' && resistance.along > 0.5,
  );
  it.each(barred.map((lift) => [lift.name, lift] as const))('the bar of the %s', (_, lift) => {
    const stance = new Stance(lift, man, 60);
    const { resistance } = lift;
    if (resistance.kind !== 'mass') throw new Error('no bar');
    for (let deg = 45; deg <= Math.min(lift.rangeDeg[1], 135); deg += 7.5) {
      const held = stance.posture(toRadians(deg));
      if ('impossible' in held) continue;
      const shoulders = held.placement.links[2];
      if (!shoulders) throw new Error('no trunk');
      // From the hip along the trunk and square to it, by hand; hanging hands an arm lower.
      const { start, direction } = shoulders;
      const onTrunk = resistance.along * trunk * Math.cos(direction);
      const square = resistance.across * Math.sin(direction);
      const height = start.y + onTrunk - square - (resistance.below === undefined ? 0 : arm);
      const back = found(lift, { kind: 'pins', height }, 60);
      expect(Math.abs(back.deg - deg)).toBeLessThan(0.06);
    }
    expect(barred).toHaveLength(13);
  });

  it('of 14 standing lifts, so that the list above is no accident', () => {
    expect(standing).toHaveLength(14);
  });
});

describe('the load', () => {
  const stretch = [0, toRadians(150)] as const;
  const squat = liftNamed('back squat');

  it('hardly moves a box squatter’s knee, but the bar’s height: then the answer says how much', () => {
    const guess = { usual: 80 };
    const box = angleAtHeight(squat, man, { kind: 'box', height: 0.42 }, guess, stretch);
    expect(box).toMatchObject({ state: 'found', load: 80 });
    expect(box).not.toHaveProperty('spread');
    const pins = angleAtHeight(squat, man, { kind: 'pins', height: 0.95 }, guess, stretch);
    // A heavier bar must come nearer to the middle of the foot, so the trunk stays more upright and
    // the knee must bend further for the same height.
    if (pins.state !== 'found' || !pins.spread) throw new Error('no spread');
    expect(pins.spread.loads).toEqual([40, 120]);
    const [light = 0, heavy = 0] = pins.spread.angles;
    expect(light).toBeLessThan(pins.angle - toRadians(1));
    expect(heavy).toBeGreaterThan(pins.angle);
  });

  it('is used where it is known, without a spread', () => {
    const height = { kind: 'pins', height: 0.95 } as const;
    const known = angleAtHeight(squat, man, height, { known: 40, usual: 80 }, stretch);
    const usual = angleAtHeight(squat, man, height, { usual: 80 }, stretch);
    if (usual.state !== 'found') throw new Error(usual.state);
    expect(known).toMatchObject({ state: 'found', angle: usual.spread?.angles[0], load: 40 });
    expect(known).not.toHaveProperty('spread');
  });
});

describe('heights that tell no angle', () => {
  it('above and below what the body reaches', () => {
    const range = [toRadians(40), toRadians(125)] as const;
    const answer = angleAtHeight(leaning, man, { kind: 'box', height: 0.2 }, { usual: 80 }, range);
    // At 125° the thigh points 5° below level: 0.45368 − 0.441 · sin 5° − 0.085 = 0.3302.
    expect(answer).toMatchObject({
      state: 'beyond',
      least: { angle: toRadians(125), value: expect.closeTo(0.3302, 4) },
    });
  });

  it('met twice, as by a bar far behind the shoulders, which first rises', () => {
    const behind: Lift = {
      ...liftNamed('good morning'),
      resistance: { kind: 'mass', on: 'trunk, head and arms', along: 1, across: -0.3 },
      follow: [
        { joint: 'knee', rule: 'linear', fromDeg: 0, perLeading: 0 },
        { joint: 'ankle', rule: 'linear', fromDeg: 0, perLeading: 0 },
      ],
    };
    // With trunk length L and 0.3 m behind it the bar stands L · cos q + 0.3 · sin q over the hip:
    // as high at 0° as at 2 · atan(0.3 / 0.5184) = 60.1°; 1 cm above that within those two.
    const height = ankle + shank + thigh + trunk + 0.01;
    const answer = angleAtHeight(behind, man, { kind: 'pins', height }, { usual: 20 }, [
      0,
      toRadians(90),
    ]);
    if (answer.state !== 'several') throw new Error(answer.state);
    const [first = 0, second = 0] = answer.angles.map(toDegrees);
    expect(first + second).toBeCloseTo(60.1, 1);
  });

  it('an end that a tape would not tell from the height is taken for it', () => {
    // The split squat ends at 120°; its thigh is level 0.4° further down, 3 mm.
    expect(found(liftNamed('split squat'), { kind: 'thigh level' }).deg).toBeCloseTo(120, 9);
  });
});
