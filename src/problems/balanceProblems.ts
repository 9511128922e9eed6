import { balancedStretch } from '../mechanics/balancedStretch.ts';
import type { Lift } from '../mechanics/lift.ts';
import type { Body } from '../mechanics/posture.ts';
import type { LiftWork } from '../notebook/scenario.ts';
import type { LiftTest } from '../notebook/tests/strengthTest.ts';
import type { Problem } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';
import { toDegrees, toRadians } from '../numeric/degrees.ts';
import { jointReachDeg } from '../tables/segmentEnds.ts';
import { degreesOf, overWhat } from './amounts.ts';

/**
 * Whether a declared lift can be stood in at all: a problem if nowhere in its range, a note if only
 * in a part of it.
 */
export function liftBalance(
  source: Source,
  lift: Lift,
  body: Body,
): { readonly problems: readonly Problem[]; readonly notes: readonly Problem[] } {
  const at = source.at(['lifts', lift.name], { key: true });
  const [first, last] = lift.rangeDeg;
  const held = balancedStretch(lift, body);
  if (held && held[0] === first && held[1] === last) return { problems: [], notes: [] };
  const code = 'cannot-balance';
  if (held) {
    const message = `with this body the ${lift.name} can be held in balance from ${held[0]}° to ${held[1]}° only, not from ${first}° to ${last}°`;
    return { problems: [], notes: [{ code, message, at, hint: 'write that as its range' }] };
  }
  const elsewhere = balancedStretch(lift, body, jointReachDeg[lift.leading]);
  const message = `with this body the ${lift.name} cannot be held in balance anywhere from ${first}° to ${last}°`;
  const hint = elsewhere
    ? `it can be from ${elsewhere[0]}° to ${elsewhere[1]}°: write that as its range, or check where the load acts and how the joints follow`
    : 'check where the load acts, how the joints follow and which way each turns';
  return { problems: [{ code, message, at, hint }], notes: [] };
}

/** A range that this body cannot go through in balance, with the part of it that it can. */
export function unbalanced(
  source: Source,
  entry: LiftWork | LiftTest,
  lift: Lift,
  body: Body,
): Problem {
  const from = entry.from ?? toRadians(lift.rangeDeg[0]);
  const ends = [from, entry.to].map(toDegrees);
  const held = balancedStretch(lift, body, [Math.min(...ends), Math.max(...ends)]);
  const nearest = held ? `; it can be from ${Math.round(held[0])}° to ${Math.round(held[1])}°` : '';
  return {
    code: 'cannot-balance',
    message: `the ${entry.lift} to ${degreesOf(entry.to)} cannot be held in balance${overWhat(lift)} with this body${nearest}`,
    at: source.at([...entry.path, 'to']),
    hint: 'check the segment lengths and the ankle limit, or end the range earlier',
  };
}
