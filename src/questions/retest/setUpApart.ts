import type { Tested } from '../../notebook/tests/setUpsOf.ts';
import { toDegrees } from '../../numeric/degrees.ts';

/** What tells a set-up from the others of its action; nothing where it is the only one. */
export interface SetUpApart {
  readonly side?: 'left' | 'right' | 'both' | 'not stated';
  /** Angles of neighbour joints, radians. */
  readonly neighbours: Readonly<Record<string, number>>;
  readonly score?: 'best' | 'mean';
  readonly angleTaken?: 'at rest' | 'during effort' | 'not stated';
  readonly limbWeight?: 'left in' | 'taken out';
}

/** What tells a set-up from others of its action. */
export function setUpApart(
  [one]: readonly Tested[],
  all: readonly (readonly Tested[])[],
): SetUpApart {
  if (!one) return { neighbours: {} };
  const tests = all.flat().map(({ test }) => test);
  const differ = (values: readonly unknown[]) =>
    new Set(values.filter((value) => value !== undefined)).size > 1;
  const { side, score, angleTaken = 'not stated', neighbours } = one.test;
  const weight = ({ gravity }: Tested['test']) =>
    gravity?.kind === 'none' ? 'left in' : 'taken out';
  const moved = Object.entries(neighbours).filter(([joint]) => {
    const known = tests.flatMap((test) => test.neighbours[joint] ?? []).map(toDegrees);
    return Math.max(...known) - Math.min(...known) > 10 + 1e-6;
  });
  return {
    ...(differ(tests.map((test) => test.side)) ? { side: side ?? ('not stated' as const) } : {}),
    neighbours: Object.fromEntries(moved),
    ...(differ(tests.map((test) => test.score)) ? { score } : {}),
    ...(differ(tests.map((test) => test.angleTaken)) ? { angleTaken } : {}),
    ...(differ(tests.map(weight)) ? { limbWeight: weight(one.test) } : {}),
  };
}
