import { setUpDifference } from './setUpDifference.ts';
import type { Tested } from './setUpsOf.ts';

/** Whether tests of one set-up and tests of another are the same measurement. */
export const isSameSetUp = (before: readonly Tested[], after: readonly Tested[]): boolean =>
  before.every(({ test: one }) =>
    after.every(
      ({ test: other }) => one.action === other.action && setUpDifference(one, other) === undefined,
    ),
  );
