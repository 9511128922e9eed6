import type { Work } from '../notebook/scenario.ts';
import type { Exercise } from '../physiology/exercise.ts';
import type { Range } from '../physiology/heaviestLoad.ts';
import type { ProgramResult, Results } from '../run.ts';
import type { Section } from './report.ts';
import { absurdVolume, muchForNovice } from './volumeCautions.ts';

/**
 * The usual cautions, always printed. Need and sources: screening, ACSM preparticipation chapter;
 * scope, NSCA professional standards 2017; lay-off and lowering work, CSCCa/NSCA 2019; breath and
 * pressure, MacDougall 1985 and the wall-squat safety study of 2018; spotting and bands, common practice;
 * minors, NSCA youth stand 2009; pregnancy, ACOG opinion 804; volume, ACSM stand 2026 (ten sets). Cut-offs are common practice.
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
  'Bands: look each one over before use and throw out any with a nick; fix them to a rated anchor that can neither tip nor slide; keep faces out of their line; put them on and off with the bar on pins.',
  'More is not better: about ten hard sets a week as written in a plan (not the effective sets of this report) are usual for a muscle group, and twice as many, ten hours of training a week or maximal holds without rest are more than can be recovered from. Cut sets, and rest for 1 to 3 minutes between hard efforts.',
];

/** The cautions that bear on tests, under a report that ranks no programs. */
export function testCautions(): Section {
  const items = [0, 1, 2, 4, 7].map((i) => cautions[i] ?? '');
  return { heading: 'Cautions', blocks: [{ kind: 'list', items }] };
}

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

/** What of the results decides about cautions. */
type Known = Pick<Results, 'ranking' | 'singlesBefore' | 'athlete' | 'anglesDeg'>;

/** Cautions that a program trips by what it contains, in the order of the list. */
export function tripped(program: ProgramResult, results: Known): Tripped[] {
  const { work } = program.program;
  const found: Tripped[] = [];
  const deep =
    bendsKneeDeep(program, results) ||
    work.some((w) => w.kind === 'hold' && w.of.includes('squat') && w.at > deepFrom);
  const straight = work.some(
    (w) => w.kind !== 'hold' && nameOf(w).includes('knee extension') && w.from < straightBelow,
  );
  if (deep) found.push({ number: 3, because: 'it bends the knee deep under load' });
  else if (straight)
    found.push({ number: 3, because: 'it loads the nearly straight knee by machine or weight' });
  const lowers = work.flatMap(hardLowering)[0];
  if (lowers !== undefined) found.push({ number: 4, because: lowers });
  if (startsAgain(program))
    found.push({ number: 4, because: 'it starts again after two weeks off or more' });
  const novice = muchForNovice(program, results.athlete.trained);
  if (novice !== undefined) found.push({ number: 4, because: novice });
  if (work.some((w) => w.kind === 'hold' && w.effort >= hardEffort))
    found.push({ number: 5, because: 'it holds still at high effort' });
  const bar = work.some((w, i) => {
    const exercise = program.plan.exercises[i]?.exercise;
    const above = barAbove.test(nameOf(w)) || (exercise && bearsOnShoulders(exercise));
    return above && !isBodyAlone(w);
  });
  const pins = work.some((w) => w.kind === 'hold' && w.against === 'pins');
  if (pins) found.push({ number: 6, because: 'it pushes a bar against pins' });
  else if (bar)
    found.push({ number: 6, because: 'it puts a bar on the shoulders or above the body' });
  if (isHeavyPartial(program, results))
    found.push({ number: 7, because: 'its load is above the heaviest full lift here' });
  if (work.some((w) => w.kind === 'lift' && w.bands !== undefined))
    found.push({ number: 9, because: 'its bands can snap or slip off what holds them' });
  return [...found, ...absurdVolume(program).map((because) => ({ number: 10, because }))];
}

/** Whether training begins again after so many weeks off that it is to be eased into (CSCCa/NSCA 2019: two). */
const startsAgain = ({ phases, weeks }: ProgramResult) =>
  phases.some(({ places, from }, i) => {
    const off = phases.slice(0, i).reduce((sum, one) => {
      return one.places.length === 0 ? sum + one.weeks : 0;
    }, 0);
    return places.length > 0 && off >= 2 && from - off > 1 && from <= weeks;
  });

/** The lift or joint action of a piece of work. */
function nameOf(work: Work): string {
  if (work.kind === 'lift') return work.lift;
  return work.kind === 'hold' ? work.of : work.action;
}

/** Whether nothing is carried but the body. */
const isBodyAlone = (work: Work) =>
  work.kind === 'lift' && work.load.kind === 'mass' && work.load.mass === 0;

/** Why a piece of work lowers hard, if it does. */
function hardLowering(work: Work): string[] {
  if (work.kind === 'isokinetic')
    return work.ways.includes('lowering') && work.effort >= hardEffort
      ? ['its machine forces muscles to lengthen while they resist hard']
      : [];
  if (work.kind !== 'lift') return [];
  if (work.lowerOnly || work.loweringLoad) return ['it lowers more than it lifts'];
  return work.lift.includes('Nordic') ? ['it lowers a near-maximal load'] : [];
}

/**
 * Whether a lift asks the knee extensors beyond the angle that counts as deep: its own torque is
 * counted, not what they give against the hamstrings while these extend the hip.
 */
function bendsKneeDeep({ plan, program }: ProgramResult, { athlete, anglesDeg }: Known): boolean {
  const best = athlete.groups['knee extension'].torque;
  const bestAt = (angle: number) =>
    best[anglesDeg.findIndex((deg) => deg >= (angle * 180) / Math.PI - 1e-9)] ?? 0;
  return plan.exercises.some(({ samples, strength = 1 }, i) => {
    const work = program.work[i];
    // Seated machine extension presses hardest near straight instead: its own caution below.
    if (work?.kind === 'lift' && work.lift.includes('knee extension')) return false;
    return samples.some(({ asked: { angles, torques } }) => {
      const { knee = 0 } = angles;
      return knee > deepFrom && (torques.knee ?? 0) > loaded * strength * bestAt(knee);
    });
  });
}

/** Whether a standing lift, however it is called, also on the toes, carries its load at shoulder height. */
function bearsOnShoulders(exercise: Exercise): boolean {
  if (exercise.kind === 'isokinetic') return false;
  const held = exercise.kind === 'lift' ? exercise : exercise.of;
  if (!('range' in held)) return false;
  const { resistance, support } = held.range.lift;
  if (support !== 'feet' && support !== 'ball of foot') return false;
  if (resistance.kind !== 'mass' || !resistance.on.startsWith('trunk')) return false;
  return resistance.along >= 0.9 && resistance.below === undefined;
}

/** The numbers alone, "(3)", for the ranking table. */
export function cautionMarks(program: ProgramResult, results: Known): string[] {
  return [...new Set(tripped(program, results).map(({ number }) => `(${number})`))];
}

/** A load, the range it is worked in, and for a hold the model's single over the whole lift. */
interface Worked {
  readonly range: Range;
  readonly load: number;
  readonly fullSingle?: number;
}

function worked({ plan }: ProgramResult): Worked[] {
  return plan.exercises.flatMap(({ exercise, hold }): Worked[] => {
    if (exercise.kind === 'lift') return [exercise];
    if (exercise.kind === 'isokinetic' || !('range' in exercise.of)) return [];
    return [{ ...exercise.of, ...(hold ? { fullSingle: hold.fullSingle } : {}) }];
  });
}

/**
 * True if a lift's or a held lift's load exceeds the heaviest single of the same lift over a
 * longer range: those of the file, or for a hold in a file that has none, the whole lift's.
 */
function isHeavyPartial(
  program: ProgramResult,
  { ranking, singlesBefore }: Pick<Results, 'ranking' | 'singlesBefore'>,
): boolean {
  const lifted = ranking.flatMap(({ program: { plan } }) =>
    plan.exercises.flatMap(({ exercise }) =>
      exercise.kind === 'lift' && !exercise.lowerOnly
        ? [{ range: exercise.range, single: exercise.heaviest }]
        : [],
    ),
  );
  const singles = [
    ...lifted,
    ...singlesBefore.map(({ range, load: single }) => ({ range, single })),
  ];
  return worked(program).some(({ range, load, fullSingle = 0 }) => {
    const longer = singles.filter(
      (other) =>
        other.range.lift === range.lift &&
        other.range.from <= range.from + 0.2 &&
        other.range.to > range.to,
    );
    return longer.length > 0
      ? longer.some(({ single }) => single < load)
      : fullSingle > 0 && fullSingle < load;
  });
}

/** All cautions, numbered. */
export function cautionSection(): Section {
  return {
    heading: 'Cautions',
    blocks: [{ kind: 'list', items: cautions.map((text, i) => `(${i + 1}) ${text}`) }],
  };
}

/** Those that the programs of a ranking touch, for a page that has not all of them. */
export function trippedCautions(results: Results): Section[] {
  const numbers = new Set(
    results.ranking.flatMap(({ program }) => tripped(program, results).map(({ number }) => number)),
  );
  const items = cautions.flatMap((text, i) => (numbers.has(i + 1) ? [`(${i + 1}) ${text}`] : []));
  if (items.length === 0) return [];
  return [{ heading: 'Cautions for these programs', blocks: [{ kind: 'list', items }] }];
}
