import {
  type IntraclassCorrelations,
  intraclassCorrelations,
} from '../../inference/reliability/intraclassCorrelation.ts';
import {
  type Agreement,
  limitsOfAgreement,
} from '../../inference/reliability/limitsOfAgreement.ts';
import { minimalDetectableChange } from '../../inference/reliability/minimalDetectableChange.ts';
import { isRefusal } from '../../inference/reliability/refusal.ts';
import { type ScoreTable, varianceParts } from '../../inference/reliability/repeatedTests.ts';
import { standardErrorOfMeasurement } from '../../inference/reliability/standardErrorOfMeasurement.ts';
import { type TypicalError, typicalError } from '../../inference/reliability/typicalError.ts';
import { smallestWorthwhileChange } from '../../inference/reliability/worthwhile.ts';
import { isSameAngle } from '../../inference/retest/testDay.ts';
import type { RepeatedTest } from '../../notebook/tests/strengthTest.ts';
import { meanOf, standardDeviation } from '../../numeric/moments.ts';
import type { Results } from '../../run.ts';

type Days = Extract<RepeatedTest, { kind: 'days' }>;

/** One angle, or the mean of all angles, over repeated test days. */
export interface RepeatedScore {
  /** Radians; undefined for the mean of the angles. */
  readonly angle?: number;
  readonly mean: number;
  readonly error: TypicalError;
  /** Change of one person between two single days that passes noise once in 20 cases, N·m. */
  readonly detectable: number;
  /** Only of two people or more. */
  readonly people?: {
    /** √E and √W of the two-way analysis, N·m. */
    readonly consistency: number;
    readonly agreement: number;
    readonly correlations?: IntraclassCorrelations;
    /** A fifth of the spread between people, N·m; undefined where that is all noise. */
    readonly worthwhile?: number;
  };
  /** Second day less first; only of two days and two people or more. */
  readonly limits?: Agreement;
}

/** How repeatable one action's test is. */
export interface RepeatedAction {
  readonly action: string;
  readonly people: number;
  readonly days: number;
  /** Mean of the angles first, then each angle that everybody did on every day. */
  readonly scores: readonly RepeatedScore[];
}

/** Every set of repeated test days of a scenario. */
export function judgeRepeats({ scenario }: Results): RepeatedAction[] {
  return scenario.repeatability.flatMap((entry) =>
    entry.kind === 'days' && 'action' in entry.of
      ? [{ action: entry.of.action, ...counted(entry), scores: scoresOf(entry) }]
      : [],
  );
}

const counted = ({ people }: Days) => ({
  people: people.length,
  days: Math.max(...people.map(({ days }) => days.length)),
});

function scoresOf(entry: Days): RepeatedScore[] {
  const every = entry.people.flatMap(({ days }) => days);
  const angles = (every[0] ?? [])
    .map(({ angle }) => angle)
    .filter((angle) => every.every((day) => day.some((one) => isSameAngle(one.angle, angle))));
  const tables = angles.map((angle) => ({ angle, table: tableOf(entry, angle) }));
  const means: ScoreTable = (tables[0]?.table ?? []).map((row, person) =>
    row.map((_, day) => meanOf(tables.map(({ table }) => table[person]?.[day] ?? Number.NaN))),
  );
  const each = tables.flatMap(({ angle, table }) => scoreOf(table, angle) ?? []);
  const whole = tables.length > 1 ? scoreOf(means) : undefined;
  return whole ? [whole, ...each] : each;
}

/** People × days at one angle. */
function tableOf({ people, score }: Days, angle: number): number[][] {
  return people.map(({ days }) =>
    days.map((points) => {
      const trials = points.find((point) => isSameAngle(point.angle, angle))?.trials ?? [];
      return score === 'best' ? Math.max(...trials) : meanOf(trials);
    }),
  );
}

function scoreOf(table: ScoreTable, angle?: number): RepeatedScore | undefined {
  const [error, parts] = [typicalError(table), varianceParts(table)];
  if (isRefusal(error) || isRefusal(parts)) return undefined;
  const { degreesOfFreedom, amount } = error;
  const column = (day: number) => table.map((row) => row[day] ?? Number.NaN);
  const limits =
    parts.days === 2 && parts.targets > 1 ? limitsOfAgreement(column(1), column(0)) : undefined;
  return {
    ...(angle === undefined ? {} : { angle }),
    mean: parts.grandMean,
    error,
    detectable: minimalDetectableChange({ value: amount.value, degreesOfFreedom }),
    ...(parts.targets > 1 ? { people: peopleOf(table, parts) } : {}),
    ...(limits && !isRefusal(limits) ? { limits } : {}),
  };
}

function peopleOf(
  table: ScoreTable,
  parts: Exclude<ReturnType<typeof varianceParts>, { refused: string }>,
): NonNullable<RepeatedScore['people']> {
  const correlations = intraclassCorrelations(parts);
  const consistency = standardErrorOfMeasurement(parts);
  const between = standardDeviation(table.map((row) => meanOf(row.map((score) => score ?? 0))));
  const worthwhile = smallestWorthwhileChange(between, consistency / Math.sqrt(parts.days));
  return {
    consistency,
    agreement: standardErrorOfMeasurement(parts, 'agreement'),
    ...(isRefusal(correlations) ? {} : { correlations }),
    ...(typeof worthwhile === 'number' ? { worthwhile } : {}),
  };
}
