import { describe, expect, test } from 'vitest';
import { changed } from './goodScenario.ts';
import { told } from './told.ts';

/** Angles at which nothing is known of an action's strength, or that no usual knee reaches. */

const hold = 'hold: knee extension, at: 90 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5';
const squat = 'lift: back squat, from: 0 deg, to: 115 deg, load: 80 %';
const freeKnee = [', knee flexion: 125 deg', ''] as const;
const fromSquare =
  'write an angle within that; the ankle counts from 0 deg (foot square to the shank), dorsiflexion positive';

const included = (work: string) => `title: A
angles: included
group: { name: men, reference: male, stature: 178 cm, mass: 78 kg, training: 0 years }
target: { action: knee extension, from: 120 deg, to: 80 deg }
programs:
  p: { weeks: 8, sessions per week: 2, work: [{ ${work}, effort: 90 %, sets: 3, reps: 6, seconds: 5 }] }
`;

describe('holds of a joint action beyond what is known', () => {
  test.each<[string, string[]]>([
    [
      'ankle plantarflexion, at: 80 deg',
      [
        `36 [80 deg] at is 80 deg of ankle dorsiflexion; strength in ankle plantarflexion is known from -45 to 35 deg | ${fromSquare}`,
      ],
    ],
    [
      'hip extension, at: 170 deg',
      [
        '36 [170 deg] at is 170 deg of hip flexion; strength in hip extension is known from 0 to 130 deg | write an angle within that; the hip counts from 0 deg (thigh in line with the trunk), flexion positive',
      ],
    ],
    [
      'elbow flexion, at: 170 deg',
      [
        '36 [170 deg] at is 170 deg of elbow flexion; strength in elbow flexion is known from 0 to 140 deg | write an angle within that; the elbow counts from 0 deg (straight), flexion positive',
      ],
    ],
    [
      'shoulder flexion, at: -90 deg',
      [
        '36 [-90 deg] at is -90 deg of shoulder flexion; strength in shoulder flexion is known from -20 to 160 deg | write an angle within that; the shoulder counts from 0 deg (arm at the side), flexion positive',
      ],
    ],
    [
      'knee extension, at: 149 deg',
      [
        '36 [149 deg] at is 149 deg of knee flexion; strength in knee extension is known from 0 to 140 deg | write an angle within that; the knee counts from 0 deg (straight), flexion positive',
      ],
    ],
    ['knee extension, at: 140 deg', []],
    ['ankle plantarflexion, at: -45 deg', []],
  ])('%s', async (written, expected) => {
    const text = changed(freeKnee, [hold, hold.replace('knee extension, at: 90 deg', written)]);
    expect(await told(text)).toEqual(expected);
  });

  test.each<[string, string[]]>([
    [
      'hip extension, at: 10 deg',
      [
        '6 [10 deg] at is 10 deg included (170 deg of hip flexion); strength in hip extension is known from 180 to 50 deg included | write an angle within that; the hip counts down from 180 deg (thigh in line with the trunk)',
      ],
    ],
    [
      'ankle plantarflexion, at: 80 deg',
      [
        `6 [80 deg] at is 80 deg of ankle dorsiflexion; strength in ankle plantarflexion is known from -45 to 35 deg | ${fromSquare}, whatever angles: says`,
      ],
    ],
    ['knee extension, at: 41 deg', []],
  ])('with included angles the range is told as the file writes it: %s', async (work, expected) => {
    expect(await told(included(`hold: ${work}`))).toEqual(expected);
  });

  test('a tested angle too', async () => {
    expect(await told(changed([', 60 deg: [', ', 145 deg: [']))).toEqual([
      '17 [145 deg] an angle of the test is 145 deg of knee flexion; strength in knee extension is known from 0 to 140 deg | write an angle within that; the knee counts from 0 deg (straight), flexion positive',
    ]);
  });
});

describe('beyond the knee', () => {
  // Usual limit: 144 deg, Roaas and Andersson 1982 (recalled).
  test('without a limit of the athlete, the usual one', async () => {
    const deep = changed(freeKnee, [squat, squat.replace('115 deg', '149 deg')]);
    expect(await told(deep)).toEqual([
      '32 [149 deg] back squat goes to 149 deg of knee flexion, past the usual limit of a knee, 144 deg of flexion; the file gives no other | end it at 144 deg or, if this knee bends that far, write knee flexion: 149 deg under athlete.limits',
    ]);
    expect(await told(changed(freeKnee, [squat, squat.replace('115', '144')]))).toEqual([]);
  });

  test('the athlete’s own limit goes before the usual one', async () => {
    const supple = changed(
      ['knee flexion: 125 deg', 'knee flexion: 150 deg'],
      [squat, squat.replace('115 deg', '149 deg')],
    );
    expect(await told(supple)).toEqual([]);
  });

  test('a hold of a lift, with included angles', async () => {
    expect(await told(included('hold: back squat, at: 31 deg'))).toEqual([
      '6 [31 deg] hold of back squat goes to 31 deg included (149 deg of knee flexion), past the usual limit of a knee, 144 deg of flexion; the file gives no other | end it at 36 deg included or, if this knee bends that far, write knee flexion: 149 deg under group.limits',
    ]);
  });

  test('a tested single past the athlete’s own limit', async () => {
    expect(await told(changed(['to: 110 deg', 'to: 130 deg']))).toEqual([
      "21 [130 deg] back squat goes to 130 deg of knee flexion, past the athlete's limit of 125 deg (athlete.limits.knee flexion)",
    ]);
  });

  test('ends of a lift that is not known are not held against the knee', async () => {
    const hips = squat.replace('back squat, from: 0', 'dead lift, from: -10');
    expect(await told(changed([squat, hips]))).toEqual([
      '32 [dead lift] lift is "dead lift"; there is no such lift | did you mean "deadlift"?',
    ]);
  });
});
