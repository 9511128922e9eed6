import {
  type IntraclassCorrelations,
  intraclassCorrelations,
} from '../../inference/reliability/intraclassCorrelation.ts';
import {
  type Agreement,
  limitsOfAgreement,
} from '../../inference/reliability/limitsOfAgreement.ts';
import {
  minimalDetectableChange,
  testDaysNeeded,
} from '../../inference/reliability/minimalDetectableChange.ts';
import { isRefusal } from '../../inference/reliability/refusal.ts';
import { type ScoreTable, varianceParts } from '../../inference/reliability/repeatedTests.ts';
import { standardErrorOfMeasurement } from '../../inference/reliability/standardErrorOfMeasurement.ts';
import { type TypicalError, typicalError } from '../../inference/reliability/typicalError.ts';
import { smallestWorthwhileChange } from '../../inference/reliability/worthwhile.ts';
import type { AngleTrials } from '../../inference/retest/testDay.ts';
import { setUpsOf } from '../../notebook/tests/setUpsOf.ts';
import { isSameAngle } from '../../numeric/degrees.ts';
import { meanOf, standardDeviation } from '../../numeric/moments.ts';
import type { Results } from '../../run.ts';
import { testDays } from '../../stages/testedTorques.ts';
import { occasionsOf } from './occasions.ts';

/** Repeated days of some people, scored one way. */
interface Days {
  readonly score: 'best' | 'mean';
  /** Both: trials of both limbs together. */
  readonly side?: 'left' | 'right' | 'both' | undefined;
  readonly people: readonly { readonly days: readonly (readonly AngleTrials[])[] }[];
}

/** One angle, or the mean of all angles, over repeated test days. */
export interface RepeatedScore {
  /** Radians; undefined for the mean of the angles. */
  readonly angle?: number;
  readonly mean: number;
  readonly error: TypicalError;
  /** Change of one person between two single days that passes noise once in 20 cases, N·m. */
  readonly detectable: number;
  /** The wanted gain, share, and the test days before and after at which it would stand out. */
  readonly wanted: number;
  readonly daysNeeded: number;
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
  /** Stated under `repeatability`, or the days of the tests or of a retest. */
  readonly of: 'stated' | 'tests' | 'retest';
  readonly people: number;
  readonly days: number;
  /** Mean of the angles first, then each angle that everybody did on every day. */
  readonly scores: readonly RepeatedScore[];
}

/** Every set of repeated test days of a scenario: those stated, and tests of several days. */
export function judgeRepeats({ scenario, athlete }: Results): RepeatedAction[] {
  const { gain: wanted = usualWish } = scenario.target;
  const stated = scenario.repeatability.flatMap((entry) =>
    entry.kind === 'days' && 'action' in entry.of
      ? [
          {
            action: entry.of.action,
            of: 'stated' as const,
            ...counted(entry),
            scores: scoresOf(entry, wanted),
          },
        ]
      : [],
  );
  const occasions = occasionsOf(scenario, athlete.body);
  const actions = new Set(
    occasions.flatMap(({ torques }) => torques.map(({ test }) => test.action)),
  );
  const tested = [...actions].flatMap((action) =>
    occasions.flatMap(({ torques }, i): RepeatedAction[] => {
      const of = i === 0 ? ('tests' as const) : ('retest' as const);
      const own = torques.filter(({ test }) => test.action === action);
      return setUpsOf(own).flatMap((setUp): RepeatedAction[] => {
        const days = testDays(setUp);
        const [first] = days;
        if (!first || days.length < 2) return [];
        const entry = { score: first.score, people: [{ days: days.map(({ angles }) => angles) }] };
        return [{ action, of, ...counted(entry), scores: scoresOf(entry, wanted) }];
      });
    }),
  );
  return [...stated, ...tested];
}

const counted = ({ people }: Days) => ({
  people: people.length,
  days: Math.min(...people.map(({ days }) => days.length)),
});

/** What is looked for where the file wants no gain, share. */
const usualWish = 0.1;

function scoresOf(entry: Days, wanted: number): RepeatedScore[] {
  const { days: count } = counted(entry);
  const every = entry.people.flatMap(({ days }) => days.slice(0, count));
  const angles = (every[0] ?? [])
    .map(({ angle }) => angle)
    .filter((angle) => every.every((day) => day.some((one) => isSameAngle(one.angle, angle))));
  const tables = angles.map((angle) => ({ angle, table: tableOf(entry, angle, count) }));
  const means: ScoreTable = (tables[0]?.table ?? []).map((row, person) =>
    row.map((_, day) => meanOf(tables.map(({ table }) => table[person]?.[day] ?? Number.NaN))),
  );
  const each = tables.flatMap(({ angle, table }) => scoreOf(table, wanted, angle) ?? []);
  const whole = tables.length > 1 ? scoreOf(means, wanted) : undefined;
  return whole ? [whole, ...each] : each;
}

/** People × days at one angle, over the days that everybody has, N·m of one side: half of both limbs’. */
function tableOf({ people, score, side }: Days, angle: number, count: number): number[][] {
  const limbs = side === 'both' ? 2 : 1;
  return people.map(({ days }) =>
    days.slice(0, count).map((points) => {
      const trials = points.find((point) => isSameAngle(point.angle, angle))?.trials ?? [];
      return (score === 'best' ? Math.max(...trials) : meanOf(trials)) / limbs;
    }),
  );
}

function scoreOf(table: ScoreTable, wanted: number, angle?: number): RepeatedScore | undefined {
  const [error, parts] = [typicalError(table), varianceParts(table)];
  if (isRefusal(error) || isRefusal(parts)) return undefined;
  const size = { value: error.amount.value, degreesOfFreedom: error.degreesOfFreedom };
  const column = (day: number) => table.map((row) => row[day] ?? Number.NaN);
  const limits =
    parts.days === 2 && parts.targets > 1 ? limitsOfAgreement(column(1), column(0)) : undefined;
  return {
    ...(angle === undefined ? {} : { angle }),
    mean: parts.grandMean,
    error,
    detectable: minimalDetectableChange(size),
    wanted,
    daysNeeded: testDaysNeeded(size, wanted * parts.grandMean).days,
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
