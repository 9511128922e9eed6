import { describe, expect, test } from 'vitest';
import { kickback, withLifts } from './declareLift.ts';
import { told } from './told.ts';

describe('what a declared lift may not be', () => {
  test('the one these are changed from is good', async () => {
    expect(await told(withLifts(kickback))).toEqual([]);
  });

  test.each<[string, string, string[]]>([
    // An ankle that stays still beside the chain may be stated.
    ['joint: knee, rule', 'joint: ankle, rule', []],
    [
      'joint: knee, rule: linear, from: 20 deg, per leading: 0',
      'joint: ankle, rule: balance',
      ['33 [ankle] the ankle follows, but it is not in the chain | joints of the chain: hip, knee'],
    ],
    [
      'joint: knee, rule',
      'joint: hip, rule',
      ['33 [hip] the hip leads and cannot follow a rule | delete this rule'],
    ],
    [
      '[{ joint: knee, rule: linear, from: 20 deg, per leading: 0 }]',
      '[{ joint: knee, rule: balance }, { joint: knee, rule: direction, direction: 0 deg }]',
      ['33 [knee] the knee follows two rules | delete this rule'],
    ],
    [
      'leads: hip',
      'leads: ankle',
      ['31 [ankle] the ankle leads, but it is not in the chain | joints of the chain: hip, knee'],
    ],
    [
      'on: shank and foot',
      'on: trunk and head',
      [
        '34 [trunk and head] the resistance acts on the trunk and head, which is not in the chain | segments of the chain: thigh, shank and foot',
      ],
    ],
    [
      'segment: shank and foot, joint: knee, near: proximal',
      'segment: forearm and hand, joint: elbow, near: proximal',
      [
        '27 [elbow] the forearm and hand begins at the elbow, but the thigh before it does not end there | it ends at the knee',
        '34 [shank and foot] the resistance acts on the shank and foot, which is not in the chain | segments of the chain: thigh, forearm and hand',
      ],
    ],
    [
      'joint: knee, near: proximal',
      'joint: hip, near: proximal',
      ['27 [hip] the proximal end of the shank and foot is not at the hip | proximal: knee'],
    ],
    [
      '{ segment: thigh, joint: hip, near: proximal, turn: -1, offset: 180 deg }, { segment: shank and foot, joint: knee',
      '{ segment: shank and foot, joint: knee, near: proximal, turn: 1 }, { segment: thigh, joint: hip',
      [
        '27 [hip] the thigh begins at the hip, but the shank and foot before it does not end there | nothing can follow the shank and foot',
      ],
    ],
    [
      'support: seat',
      'support: feet',
      [
        '27 [{ segment: thigh, joint: hip, near: proximal, turn: -1, offset: 180 deg }] support is feet, but the chain begins with the thigh | begin the chain with the shank, or write support: seat',
      ],
    ],
    [
      '{ segment: thigh, joint: hip, near: proximal, turn: -1, offset: 180 deg }',
      '{ segment: "trunk, head and arms", joint: hinge, near: proximal, turn: 1 }, { segment: thigh, joint: hip, near: proximal, turn: -1 }',
      [
        '27 [chain] the chain turns freely about its hinge and nothing holds it | add a follow rule balance, or a contact that carries the other end',
      ],
    ],
    [
      'range: [-10 deg, 60 deg]',
      'range: [60 deg, 60 deg]',
      [
        '32 [[60 deg, 60 deg]] range runs from 60 to 60 deg; it needs two angles, the smaller one first',
      ],
    ],
    [
      'range: [-10 deg, 60 deg]',
      'range: [-10 deg, 160 deg]',
      [
        '32 [[-10 deg, 160 deg]] range runs from -10 to 160 deg; the hip goes from -40 to 145 deg | write the range within that',
      ],
    ],
    [
      'range: [-10 deg, 60 deg]',
      'range: [-10 deg]',
      ['32 [[-10 deg]] range must be two angles, such as [0 deg, 120 deg]'],
    ],
    [
      '    leads: hip\n    range: [-10 deg, 60 deg]\n',
      '',
      [
        '26 [cable kickback] the lift "cable kickback" lacks leads, range | add what is missing, or write like: and a lift of the catalogue to start from',
      ],
    ],
    [
      'cable kickback',
      'back squat',
      [
        '26 [back squat] "back squat" is a lift of the catalogue | call yours otherwise, for example "back squat of ours", and write like: back squat',
      ],
    ],
    [
      'cable kickback',
      'hip extension',
      [
        '26 [hip extension] "hip extension" is a joint action, which a hold may name | call the lift otherwise, for example "hip extension of ours"',
      ],
    ],
    [
      '    support: seat',
      '    like: hip flexer raise\n    support: seat',
      [
        '28 [hip flexer raise] like is "hip flexer raise"; the catalogue has no such lift | did you mean "hip flexor raise"?',
      ],
    ],
    [
      'rule: linear, from: 20 deg, per leading: 0',
      'rule: linear, per leading: 0, most: 3 deg',
      [
        '33 [{ joint: knee, rule: linear, per leading: 0, most: 3 deg }] "linear" needs from, which is missing | it takes: from, per leading',
        '33 [most] "linear" takes no most | it takes: from, per leading',
      ],
    ],
    [
      'rule: linear, from: 20 deg, per leading: 0',
      'rule: balance, from: 20 deg',
      ['33 [from] "balance" takes no from | delete from'],
    ],
    [
      'kind: cable, on: shank and foot, along: 1, across: 0 cm, pulley forward: 1 m, pulley up: -85 cm',
      'kind: mass, on: shank and foot, along: 1, arm: 20 cm',
      [
        '34 [{ kind: mass, on: shank and foot, along: 1, arm: 20 cm }] "mass" needs across, which is missing | it takes: on, along, across, below (if any)',
        '34 [arm] "mass" takes no arm | it takes: on, along, across, below (if any)',
      ],
    ],
    ['turn: -1', 'turn: -2', ['27 [-2] turn must be 1 or -1']],
    ['along: 1', 'along: 1.2', ['34 [1.2] along is 1.2; it lies between 0 and 1']],
    [
      'near: proximal, turn: -1',
      'turn: -1',
      ['27 [{] lifts.cable kickback.chain.1.near is missing | add for example "near: proximal"'],
    ],
    [
      'pulley up: -85 cm',
      'pulley up: -85 m',
      ['34 [-85 m] pulley up is -85 m; a place on a lift lies within 5 m'],
    ],
  ])('%s → %s', async (from, to, expected) => {
    expect(kickback).toContain(from);
    expect(await told(withLifts(kickback.replace(from, to)))).toEqual(expected);
  });
});
