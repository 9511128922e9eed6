/** Whether the parts of a declared lift fit together: what hangs on what, and what is not there. */
import type { Joint, Lift } from '../mechanics/lift.ts';
import { jointReachDeg, segmentEnds, supportedSegment } from '../tables/segmentEnds.ts';
import { didYouMean } from './didYouMean.ts';
import type { Reading } from './reading.ts';
import type { Path } from './scenario.ts';
import { valueAt } from './schemaAt.ts';

/**
 * Refuses a lift whose parts do not fit together; problems are collected, never thrown.
 *
 * @param path of the lift
 * @returns whether it can be used
 */
export function checkLift(reading: Reading, lift: Lift, path: Path): boolean {
  const before = reading.problems.length;
  if (!checkLeads(reading, lift, path)) return false;
  checkChain(reading, lift, path);
  checkJoints(reading, lift, path);
  checkSegments(reading, lift, path);
  checkReach(reading, lift, path);
  return reading.problems.length === before;
}

/** A lift like another that is led otherwise needs its own rules and range: one problem, not several. */
function checkLeads(reading: Reading, lift: Lift, path: Path): boolean {
  const isWritten = (name: string) => valueAt(reading.source.value, [...path, name]) !== undefined;
  const follows = lift.follow.some(({ joint }) => joint === lift.leading);
  if (!isWritten('leads') || isWritten('follow') || !follows) return true;
  const base = valueAt(reading.source.value, [...path, 'like']);
  const message = `the ${lift.leading} leads, but in the ${base} it follows another joint`;
  const wants = isWritten('range') ? 'follow:' : 'follow: and range:';
  const hint = `delete leads, or write ${wants} of its own for a lift led by the ${lift.leading}`;
  reading.refuse([...path, 'leads'], { code: 'two-rules', message, hint });
  return false;
}

/** Each segment must begin with the joint at which the one before it ends, the first at its support. */
function checkChain(reading: Reading, lift: Lift, path: Path): void {
  const [first] = lift.chain;
  const standing = supportedSegment[lift.support];
  if (first && standing !== undefined && first.segment !== standing) {
    const message = `support is ${lift.support}, but the chain begins with the ${first.segment}`;
    const hint = `begin the chain with the ${standing}, or write support: seat`;
    reading.refuse([...path, 'chain', 0], { code: 'loose-chain', message, hint });
  }
  for (const [index, { segment, joint, near }] of lift.chain.entries()) {
    const at: Path = [...path, 'chain', index, 'joint'];
    const ends = segmentEnds[segment];
    if (!ends[near].includes(joint)) {
      const message = `the ${near} end of the ${segment} is not at the ${joint}`;
      reading.refuse(at, { code: 'loose-chain', message, hint: endsHint(ends) });
      continue;
    }
    const previous = lift.chain[index - 1];
    if (!previous) continue;
    const far = segmentEnds[previous.segment][previous.near === 'distal' ? 'proximal' : 'distal'];
    if (far.includes(joint) && joint !== 'hinge') continue;
    const reached = far.filter((name) => name !== 'hinge');
    const message = `the ${segment} begins at the ${joint}, but the ${previous.segment} before it does not end there`;
    const hint =
      reached.length > 0
        ? `it ends at the ${reached.join(' or ')}`
        : `nothing can follow the ${previous.segment}`;
    reading.refuse(at, { code: 'loose-chain', message, hint });
  }
}

const endsHint = (ends: (typeof segmentEnds)[keyof typeof segmentEnds]): string =>
  (['proximal', 'distal'] as const)
    .filter((near) => ends[near].length > 0)
    .map((near) => `${near}: ${ends[near].join(' or ')}`)
    .join('; ');

/** The leading joint and those that follow must be in the chain, each ruled once. */
function checkJoints(reading: Reading, lift: Lift, path: Path): void {
  const joints = lift.chain.map(({ joint }) => joint);
  const hint = `joints of the chain: ${joints.join(', ')}`;
  if (!joints.includes(lift.leading)) {
    const message = `the ${lift.leading} leads, but it is not in the chain`;
    reading.refuse([...path, 'leads'], { code: 'missing-joint', message, hint });
  }
  const ruled = new Set<Joint>();
  for (const [index, rule] of lift.follow.entries()) {
    const at: Path = [...path, 'follow', index, 'joint'];
    const { joint } = rule;
    // A joint beside the chain may be stated where it stays still: a bent knee slackens the calf.
    const isStill = rule.rule === 'linear' && rule.perLeading === 0;
    if (joint === lift.leading || ruled.has(joint)) {
      const message = `the ${joint} ${ruled.has(joint) ? 'follows two rules' : 'leads and cannot follow a rule'}`;
      reading.refuse(at, { code: 'two-rules', message, hint: 'delete this rule' });
    } else if (!joints.includes(joint) && !isStill) {
      const message = `the ${joint} follows, but it is not in the chain`;
      reading.refuse(at, { code: 'missing-joint', message, hint });
    }
    ruled.add(joint);
  }
  const isHeld = lift.contact !== undefined || lift.follow.some(({ rule }) => rule === 'balance');
  if (!joints.includes('hinge') || isHeld) return;
  const message = 'the chain turns freely about its hinge and nothing holds it';
  const way = 'add a follow rule balance, or a contact that carries the other end';
  reading.refuse([...path, 'chain'], { code: 'free-hinge', message, hint: way, key: true });
}

/** Resistance and contact must act on segments of the chain. */
function checkSegments(reading: Reading, lift: Lift, path: Path): void {
  const segments: readonly string[] = lift.chain.map(({ segment }) => segment);
  for (const part of ['resistance', 'contact'] as const) {
    const attached = lift[part];
    if (!attached || !('on' in attached) || segments.includes(attached.on)) continue;
    const meant = didYouMean(attached.on, segments);
    const hint = meant
      ? `did you mean "${meant}"?`
      : `segments of the chain: ${segments.join(', ')}`;
    const message = `the ${part} acts on the ${attached.on}, which is not in the chain`;
    reading.refuse([...path, part, 'on'], { code: 'missing-segment', message, hint });
  }
}

/** The range must rise and lie where a joint can go. */
function checkReach(reading: Reading, lift: Lift, path: Path): void {
  const [first, last] = lift.rangeDeg;
  if (!lift.chain.some(({ joint }) => joint === lift.leading)) return;
  const [least, most] = jointReachDeg[lift.leading];
  const at: Path = [...path, 'range'];
  if (first >= last) {
    const message = `range runs from ${first} to ${last} deg; it needs two angles, the smaller one first`;
    reading.refuse(at, { code: 'bad-range', message });
  } else if (first < least || last > most) {
    const message = `range runs from ${first} to ${last} deg; the ${lift.leading} goes from ${least} to ${most} deg`;
    reading.refuse(at, { code: 'bad-range', message, hint: 'write the range within that' });
  }
}
