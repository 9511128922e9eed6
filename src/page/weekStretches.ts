/** What one week, or the mean of several alike, puts into each band of angles. */
export interface Stretch {
  /** First and last week. */
  readonly from: number;
  readonly to: number;
  readonly sets: readonly number[];
}

/**
 * Weeks are alike where no band differs by more than this share of the busiest band of the two:
 * the width of a shade of the map (working value).
 */
const nearly = 0.2;

/** How much more may differ at each try to come down to the columns wanted. */
const wider = 1.25;

/**
 * Puts neighbouring weeks together where they are alike: with the first of their stretch, so that
 * slow changes add up until a new stretch begins. Where more than `most` stretches would be left,
 * ever larger differences count as alike; weeks off join weeks of work last.
 *
 * @param weeks some or all of a program's, in order; each stands as a stretch of its own
 */
export function weekStretches(weeks: readonly Stretch[], most: number): Stretch[] {
  let limit = nearly;
  let found = joined(weeks, limit);
  while (found.length > Math.max(most, 1)) {
    limit *= wider;
    found = joined(weeks, limit);
  }
  return found.map(meanOf);
}

function joined(weeks: readonly Stretch[], limit: number): Stretch[][] {
  const found: Stretch[][] = [];
  for (const week of weeks) {
    const current = found.at(-1);
    if (current?.[0] && isAlike(current[0], week, limit)) current.push(week);
    else found.push([week]);
  }
  return found;
}

function isAlike({ sets: one }: Stretch, { sets: other }: Stretch, limit: number): boolean {
  const most = Math.max(0, ...one, ...other);
  // Slack for differences that are the limit but for rounding.
  return one.every((sets, i) => Math.abs(sets - (other[i] ?? 0)) <= (limit + 1e-9) * most);
}

function meanOf(weeks: readonly Stretch[]): Stretch {
  const [first, last] = [weeks[0], weeks.at(-1)];
  if (!first || !last) throw new Error('a stretch of no weeks');
  const mean = (i: number) =>
    weeks.reduce((sum, { sets }) => sum + (sets[i] ?? 0), 0) / weeks.length;
  return { from: first.from, to: last.to, sets: first.sets.map((_, i) => mean(i)) };
}
