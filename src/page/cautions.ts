import type { Placed } from '../inference/ranking.ts';
import type { Exercise } from '../physiology/exercise.ts';
import type { ProgramResult } from '../run.ts';
import type { Section } from './report.ts';

/**
 * The usual cautions, always printed. Need and sources: screening, ACSM preparticipation chapter;
 * scope, NSCA professional standards 2017; lay-off and lowering work, CSCCa/NSCA 2019; breath and
 * pressure, MacDougall 1985 and the wall-squat safety study of 2018; spotting, common practice;
 * minors, NSCA youth stand 2009; pregnancy, ACOG opinion 804. Cut-offs are common practice.
 */
const cautions: readonly string[] = [
  'This report is not medical advice and clears nobody to train or play: return to sport is the decision of a licensed clinician. Local rules and qualified supervision come first.',
  'Before maximal tests or new hard training: a health questionnaire. Symptoms, or a known heart, metabolic or kidney disease: medical clearance first.',
  'Pain that is sharp, rising, or lasts past 24 hours: stop. Pain above 3 of 10: less load or range, and ask a clinician. At the front of the knee, deep squats (beyond about 60°) and machine extension near straight (below about 30°) press hardest behind the kneecap.',
  'New or back from a lay-off: start at half the volume, lowering work most carefully. Severe pain, swelling, weakness or dark urine after training is an emergency.',
  'Hard holds: breathe out while pushing. Uncontrolled blood pressure, aneurysm, eye or hernia trouble: not without a doctor.',
  'Bar on the back or in front: rack with pins set just below the lowest position, or trained spotters. Holding against pins: rated rack, collars on, a rack that cannot lift.',
  'Partial lifts above the athlete’s full lift: let spine and connective tissue get used to it, for example 5 % a week.',
  'Minors: qualified supervision always, technique first, no unsupervised maximal tests, a guardian’s consent for data. Pregnancy, recent surgery, joint replacement or brittle bones: a clinician sets the ranges.',
];

/** From where a bent knee counts as deep and a straight one as nearly straight (Powers 2014), rad. */
const deepFrom = 1.05;
const straightBelow = 0.52;
/** Effort from which a bent knee counts as loaded (working value). */
const loaded = 0.2;
/** Effort from which a hold raises blood pressure enough to be named (working value). */
const hardEffort = 0.5;

/** Lifts with a bar on the shoulders, over the face or overhead. */
const barAbove = /squat|bench press|floor press|overhead press|good morning|lying triceps/;

/** A caution that a program trips: its number in the list, and why. */
export interface Tripped {
  readonly number: number;
  readonly because: string;
}

/** Cautions that a program trips by what it contains, in the order of the list. */
export function tripped(
  program: ProgramResult,
  ranking: readonly Placed<ProgramResult>[],
): Tripped[] {
  const { work } = program.program;
  const found: Tripped[] = [];
  const deep =
    bendsKneeDeep(program) ||
    work.some((w) => w.kind === 'hold' && w.of.includes('squat') && w.at > deepFrom);
  const straight = work.some(
    (w) => w.kind === 'lift' && w.lift.includes('knee extension') && w.from < straightBelow,
  );
  if (deep) found.push({ number: 3, because: 'it bends the knee deep under load' });
  else if (straight)
    found.push({ number: 3, because: 'it loads the nearly straight knee by machine or weight' });
  if (work.some((w) => w.kind === 'hold' && w.effort >= hardEffort))
    found.push({ number: 5, because: 'it holds still at high effort' });
  const bar =
    work.some((w) => barAbove.test(w.kind === 'lift' ? w.lift : w.of)) ||
    program.plan.exercises.some(({ exercise }) => bearsOnShoulders(exercise));
  if (bar) found.push({ number: 6, because: 'it puts a bar on the shoulders or above the body' });
  if (work.some((w) => w.kind === 'lift' && w.lift.includes('Nordic')))
    found.push({ number: 4, because: 'it lowers a near-maximal load' });
  if (isHeavyPartial(program, ranking))
    found.push({ number: 7, because: 'its load is above the heaviest full lift here' });
  return found;
}

/** Whether a lift asks the knee extensors beyond the angle that counts as deep. */
function bendsKneeDeep({ plan, program }: ProgramResult): boolean {
  return plan.exercises.some(({ samples }, i) => {
    const work = program.work[i];
    // Seated machine extension presses hardest near straight instead: its own caution below.
    if (work?.kind === 'lift' && work.lift.includes('knee extension')) return false;
    return samples.some(
      ({ asked, effort }) =>
        (asked.angles.knee ?? 0) > deepFrom && (effort['knee extension'] ?? 0) > loaded,
    );
  });
}

/** Whether a standing lift, however it is called, carries its load at shoulder height. */
function bearsOnShoulders(exercise: Exercise): boolean {
  const held = exercise.kind === 'lift' ? exercise : exercise.of;
  if (!('range' in held) || held.range.lift.support !== 'feet') return false;
  const { resistance } = held.range.lift;
  return resistance.kind === 'mass' && resistance.along >= 0.9 && resistance.below === undefined;
}

/** The numbers alone, for the ranking table. */
export function cautionMarks(
  program: ProgramResult,
  ranking: readonly Placed<ProgramResult>[],
): string[] {
  return tripped(program, ranking).map(({ number }) => String(number));
}

/** True if a lift's load exceeds the heaviest single of the same lift over a longer range. */
function isHeavyPartial(
  program: ProgramResult,
  ranking: readonly Placed<ProgramResult>[],
): boolean {
  const lifted = ({ plan }: ProgramResult) =>
    plan.exercises.flatMap(({ exercise }) => (exercise.kind === 'lift' ? [exercise] : []));
  const everywhere = ranking.flatMap((placed) => lifted(placed.program));
  return lifted(program).some(({ range, load }) =>
    everywhere.some(
      (other) =>
        other.range.lift === range.lift &&
        other.range.from <= range.from + 0.2 &&
        other.range.to > range.to &&
        other.heaviest < load,
    ),
  );
}

/** All cautions, numbered. */
export function cautionSection(): Section {
  return {
    heading: 'Cautions',
    blocks: [{ kind: 'list', items: cautions.map((text, i) => `(${i + 1}) ${text}`) }],
  };
}
