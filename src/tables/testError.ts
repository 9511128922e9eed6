import type { Sourced } from './sourced.ts';

/** A published error of a kind of test, share of the score. */
export interface PublishedError {
  readonly what: string;
  /** Smallest and largest of the values given, one standard deviation of a score. */
  readonly from: number;
  readonly to: number;
  readonly known: 'read' | 'derived';
  readonly source: string;
}

/** An error to borrow where a coach has measured none, and what it rests on. */
export interface BorrowedError extends Sourced {
  readonly restsOn: readonly PublishedError[];
}

/**
 * Typical error of one day's score by kind of test, share of the score.
 *
 * The values are judgements from the rows under them; `spread` says how far the error of a careful
 * tester may lie from it, and sets how much wider verdicts with a borrowed error are. "Derived" rows
 * were published as a smallest detectable difference (divided by 1.96·√2) or in N·m (divided by
 * 250 N·m).
 */
export const testErrors = {
  'single-joint dynamometer': borrowed(0.04, 0.012, [
    derived(
      'knee extension held at 80° and 40° of flexion',
      0.03,
      0.042,
      'BMC Sports Sci Med Rehabil 2023, s13102-023-00788-z',
    ),
    read(
      'knee extension, held and isokinetic, women',
      0.031,
      0.074,
      'Isokinet Exerc Sci, ies00522',
    ),
    read(
      'knee, lifting and lowering at 60°/s',
      0.05,
      0.1,
      'Sole 2007, Arch Phys Med Rehabil, 10.1016/j.apmr.2007.02.006',
    ),
    read('knee, isokinetic at 60°/s', 0.025, 0.069, 'Kambič 2020, PMC7458332'),
    derived('hip in six directions, clinic rig', 0.032, 0.072, 'PMC8179216, 2021'),
    read('knee of older adults', 0.071, 0.094, 'Eur Rev Aging Phys Act, 10.1007/s11556-013-0131-y'),
  ]),
  'hand-held or strap': borrowed(0.07, 0.02, [
    read('hip in six directions, hand-held', 0.033, 0.07, 'Denton 2014, University of Adelaide'),
    read('hip in six directions, hand-held', 0.03, 0.12, 'Thorborg 2010'),
    derived('knee extension of inpatients, anchored', 0.087, 0.106, 'synapse.koreamed.org 1150822'),
    derived('hip in six directions, own rig', 0.04, 0.112, 'PMC8179216, 2021'),
  ]),
  'isometric multi-joint': borrowed(0.075, 0.02, [
    read('isometric squat, knee 60° to 115° of flexion', 0.075, 0.096, 'Sports 2021, 9(10):140'),
    read(
      'isometric squat, best of several trials',
      0.034,
      0.07,
      'Avoiding systematic errors in isometric squat-related studies, 2014',
    ),
  ]),
  'heaviest single': borrowed(0.04, 0.015, [
    read('1RM in 32 studies, 1595 people; median 0.042', 0.005, 0.121, 'Grgic 2020, PMC7367986'),
  ]),
} as const satisfies Readonly<Record<string, BorrowedError>>;

export type TestKind = keyof typeof testErrors;

/** Kinds of test with an error to borrow, in order. */
export const testKinds = Object.keys(testErrors) as readonly TestKind[];

/** What makes a borrowed error larger; each multiplies it. */
export const testErrorFactors = {
  /** Angles near either end of the range. */
  outerAngle: {
    value: 1.25,
    unit: 'factor',
    spread: 0.15,
    known: 'prior',
    source:
      'a judgement: isometric squat 9.2 and 9.6 % at 90° and 115° of knee flexion against 7.5 % at 60° (Sports 2021, 9(10):140)',
  },
  /** Fewer than three sessions of practice with the test. */
  unfamiliar: {
    value: 1.5,
    unit: 'factor',
    spread: 0.3,
    known: 'prior',
    source:
      'a judgement: three sessions of three trials are advised before an isometric squat counts (Kite and Callaway 2026); the size is not published',
  },
} as const satisfies Readonly<Record<string, Sourced>>;

/** What a retest may advise as an athlete's share of the forecast gains, and a file may state. */
export const responseBounds = { least: 0.2, most: 2.5 } as const;

/**
 * How unlike people's gains from the same training are, as a share of the mean gain, test noise
 * taken out.
 */
export const gainBetweenPeople: Sourced = {
  value: 0.5,
  unit: 'share of the mean gain',
  spread: 0.2,
  known: 'prior',
  source:
    'a judgement: about half the mean gain once test noise is out; few studies separate the two',
};

function borrowed(
  value: number,
  spread: number,
  restsOn: readonly PublishedError[],
): BorrowedError {
  const source = 'a judgement from the published errors listed with it';
  return { value, unit: 'share of the score', spread, known: 'prior', source, restsOn };
}

function read(what: string, from: number, to: number, source: string): PublishedError {
  return { what, from, to, known: 'read', source };
}

function derived(what: string, from: number, to: number, source: string): PublishedError {
  return { what, from, to, known: 'derived', source };
}
