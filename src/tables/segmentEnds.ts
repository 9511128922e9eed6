import type { Joint, Lift, MuscledJoint, Segment } from '../mechanics/lift.ts';

/**
 * Which joints stand at a segment's upper (proximal) and lower (distal) end, so that a lift that a
 * coach declares can be checked for gaps. Anatomy, with the hinge where a segment may end at its
 * support: the ball of the foot, the hand, the shoulder blades on a bench.
 */
export const segmentEnds: Readonly<
  Record<Segment, Readonly<Record<'proximal' | 'distal', readonly Joint[]>>>
> = {
  foot: { proximal: ['ankle'], distal: ['hinge'] },
  shank: { proximal: ['knee'], distal: ['ankle'] },
  'shank and foot': { proximal: ['knee'], distal: [] },
  thigh: { proximal: ['hip'], distal: ['knee'] },
  'trunk and head': { proximal: ['shoulder', 'hinge'], distal: ['hip'] },
  'trunk, head and arms': { proximal: ['hinge'], distal: ['hip'] },
  'upper arm': { proximal: ['shoulder', 'shoulder across'], distal: ['elbow'] },
  'forearm and hand': { proximal: ['elbow'], distal: ['hinge'] },
};

/** What touches the support, where that is fixed: the chain begins there. */
export const supportedSegment: Readonly<Partial<Record<Lift['support'], Segment>>> = {
  feet: 'shank',
  'ball of foot': 'foot',
  bar: 'forearm and hand',
};

/**
 * How far a joint of a very supple person goes, degrees, flexion positive (common knowledge; used
 * to find slips of the pen only).
 */
export const jointReachDeg: Readonly<Record<MuscledJoint, readonly [number, number]>> = {
  ankle: [-60, 50],
  knee: [0, 150],
  hip: [-40, 145],
  shoulder: [-60, 180],
  'shoulder across': [-60, 140],
  elbow: [0, 150],
};
