/** What the model finds wrong with a scenario that reads well: each problem at its place. */
import { type Calibration, isPlausible } from './inference/calibrateLifts.ts';
import { balancedStretch } from './mechanics/balancedStretch.ts';
import type { Lift } from './mechanics/lift.ts';
import type { Body } from './mechanics/posture.ts';
import type { Problem } from './notebook/problem.ts';
import type { HoldWork, LiftTest, LiftWork, Program } from './notebook/scenario.ts';
import type { Source } from './notebook/source.ts';
import type { HeldLoad } from './physiology/planHold.ts';
import type { PlannedLowering } from './physiology/planLowering.ts';
import type { PlannedExercise } from './physiology/planProgram.ts';
import { actions } from './tables/actions.ts';
import { notModelled } from './tables/partlyModelled.ts';
import { jointReachDeg } from './tables/segmentEnds.ts';

/** Tested singles that sit oddly beside the other tests: allowed, but worth a look. */
export function testRemarks(
  source: Source,
  test: LiftTest,
  calibrations: readonly Calibration[],
  place: number,
): Problem[] {
  const own = calibrations[place];
  if (!own) return [];
  const missing = notModelled(test.lift);
  if (missing !== undefined) return [notJudged(source, test, missing)];
  if (isPlausible(own.factor, calibrations, test.lift)) return [];
  return [
    {
      code: 'odd-test',
      message: `the tested ${test.lift} of ${kg(test.best)} to ${degreesOf(test.to)} does not fit what is known of this athlete’s strength: expected about ${kg(own.predicted)}`,
      at: source.at([...test.path, 'best']),
      hint: 'check unit, depth and date; forecasts for this lift rest on it',
    },
  ];
}

/** A test that the model has nothing to set against. */
function notJudged(source: Source, test: LiftTest, missing: string): Problem {
  return {
    code: 'not-judged',
    message: `the model cannot judge the tested ${test.lift} of ${kg(test.best)} to ${degreesOf(test.to)}: ${missing} are not in the tables`,
    at: source.at([...test.path, 'best']),
    hint: 'nothing to correct; what is said of this lift rests on the test alone',
  };
}

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

/** What the model says cannot be done, each at its place in the file. */
export function loadProblems(
  source: Source,
  program: Program,
  planned: readonly PlannedExercise[],
  body: Body,
): Problem[] {
  return program.work.flatMap((work, i) => {
    const plan = planned[i];
    if (!plan) return [];
    if (work.kind === 'hold') return plan.hold ? holdProblems(source, work, plan.hold) : [];
    if (work.kind !== 'lift' || plan.exercise.kind !== 'lift') return [];
    const { load, heaviest, range } = plan.exercise;
    const { lift } = range;
    if (work.lowerOnly && plan.lowering)
      return loweredProblems(source, work, plan.lowering, () =>
        unbalanced(source, work, lift, body),
      );
    if (heaviest <= 0)
      return [
        plan.weak !== undefined
          ? tooWeak(source, work, plan.weak)
          : plan.rigUse?.unbalancedAt !== undefined
            ? unbalancedRig(source, work, load, plan.rigUse.unbalancedAt)
            : unbalanced(source, work, lift, body),
      ];
    if (heaviest > mostSensible) return [nothingAsked(source, work)];
    return [
      ...(load > heaviest ? [tooHeavy(source, work, load, plan)] : rigProblems(source, work, plan)),
      ...(plan.lowering ? heavierProblems(source, work, plan.lowering, load) : []),
    ];
  });
}

/** Bands stretched beyond what can be said of them, or a rig that leaves the load no balance. */
function rigProblems(source: Source, work: LiftWork, plan: PlannedExercise): Problem[] {
  const { rigUse: use, exercise } = plan;
  if (!use || exercise.kind !== 'lift') return [];
  const { load, least, bands, samples, unbalancedAt } = use;
  const at = source.at([...work.path, work.bands === undefined ? 'chains' : 'bands']);
  const far = Math.max(...samples.map(({ bandLength = 0 }) => bandLength));
  const where = samples.find(({ bandLength }) => bandLength === far);
  if (bands && where && far > bands.stretch.longest)
    return [
      {
        code: 'band-too-long',
        message: `at ${degreesOf(where.angle)} the bands "${work.bands}" are ${metres(far)} long; their pull is known to ${metres(bands.stretch.known[1])} and guessed no farther than ${metres(bands.stretch.longest)}`,
        at,
        hint: `measure their pull at ${metres(far)} too, or fix them nearer the bar`,
      },
    ];
  // A body that hangs from a bar may well be carried by more than the weight on its belt.
  if (least && exercise.range.lift.support !== 'bar' && load + least.added < 0)
    return [
      {
        code: 'bar-floats',
        message: `at ${degreesOf(least.angle)} the bands "${work.bands}" lift ${kg(-least.added)}, more than the load of ${kg(load)}: the bar would rise by itself`,
        at,
        hint: `use weaker bands, fix them lower, or load more than ${kg(-least.added)}`,
      },
    ];
  return unbalancedAt === undefined ? [] : [unbalancedRig(source, work, load, unbalancedAt)];
}

function unbalancedRig(source: Source, work: LiftWork, load: number, angle: number): Problem {
  const key = work.bands === undefined ? 'chains' : 'bands';
  return {
    code: 'cannot-balance',
    message: `with ${load > 0 ? `${kg(load)} and ` : ''}the ${key} "${work[key]}" the ${work.lift} cannot be held in balance over the foot at ${degreesOf(angle)}`,
    at: source.at([...work.path, key]),
    hint:
      key === 'bands'
        ? 'use weaker bands, another load, or end the range earlier'
        : 'use another load, or end the range earlier',
  };
}

/** Chains and bands that do nothing over the whole range: allowed, but worth a look. */
export function rigRemarks(
  source: Source,
  { work }: Program,
  planned: readonly PlannedExercise[],
): Problem[] {
  return work.flatMap((entry, i) => {
    const use = planned[i]?.rigUse;
    if (entry.kind !== 'lift' || !use || use.samples.some(({ added }) => Math.abs(added) > 0.05))
      return [];
    const key = entry.chains === undefined ? 'bands' : 'chains';
    return [
      {
        code: 'idle-rig',
        message: `the ${key} "${entry[key]}" add nothing to the ${entry.lift} from ${degreesOf(entry.from)} to ${degreesOf(entry.to)}: they stay ${key === 'bands' ? 'slack' : 'on the floor'}`,
        at: source.at([...entry.path, key]),
        hint: key === 'bands' ? 'check the lengths and the anchor' : 'check the cord and the lift',
      },
    ];
  });
}

/** No gym holds more, kg; a heavier single means that the load acts where it turns no joint. */
const mostSensible = 1400;

function nothingAsked(source: Source, work: LiftWork): Problem {
  return {
    code: 'nothing-asked',
    message: `no weight makes the ${work.lift} hard from ${degreesOf(work.from)} to ${degreesOf(work.to)}: it turns no joint against its muscles there`,
    at: source.at([...work.path, 'lift']),
    hint: 'choose another range or, if the lift is declared here, check where its load acts',
  };
}

function tooWeak(
  source: Source,
  work: LiftWork,
  { at, held }: NonNullable<PlannedExercise['weak']>,
): Problem {
  const nearest = held
    ? `; it can be held from ${degreesOf(held[0])} to ${degreesOf(held[1])}`
    : '';
  const isPlain = work.chains === undefined && work.bands === undefined;
  const load = isPlain ? 'without a load' : 'with no load but the chains or bands';
  return {
    code: 'too-weak',
    message: `by what is known of this athlete’s strength the ${work.lift} cannot be held at ${degreesOf(at)} even ${load}${nearest}`,
    at: source.at([...work.path, held && held[0] > work.from ? 'from' : 'to']),
    hint: 'keep the range within what can be held, check the tests (unit, angle), or add a tested best for this range',
  };
}

/** What is wrong with work that is lowered only. */
function loweredProblems(
  source: Source,
  work: LiftWork,
  { load, heaviest, control }: PlannedLowering,
  whyUnbalanced: () => Problem,
): Problem[] {
  if (control.state === 'unbalanced') return [whyUnbalanced()];
  const range = `${work.lift} from ${degreesOf(work.from)} to ${degreesOf(work.to)}`;
  const [code, at] = ['no-control', source.at([...work.path, 'load'])];
  if (load === 0 && work.load.kind !== 'mass') {
    const message = `no single of the ${range} can be lifted, so a share of it is no load`;
    return [{ code, message, at, hint: 'write load: body weight, or a mass such as load: 5 kg' }];
  }
  if (load > 0 && heaviest <= 0) {
    const message = `the ${range} cannot be lowered under control with the body alone, so not with ${kg(load)} more`;
    const hint = 'write load: body weight (it counts as far as control goes), or shorten the range';
    return [{ code, message, at, hint }];
  }
  if (load > heaviest) return [tooHeavyToLower(source, work, 'load', load, heaviest)];
  if (control.state !== 'none') return [];
  const { top, beginAt } = control;
  const end = Math.abs(top - work.to) < Math.abs(top - work.from) ? 'to' : 'from';
  // Rounded toward the low end, where it is easier.
  const beginDeg = ((beginAt ?? 0) * 180) / Math.PI;
  const easier = end === 'to' ? Math.floor(beginDeg + 1e-9) : Math.ceil(beginDeg - 1e-9);
  const begin = beginAt === undefined ? 'choose an easier lift' : `begin at ${easier}°`;
  return [
    {
      code,
      message: `the ${work.lift} cannot be lowered under control from ${degreesOf(top)}: the body alone asks too much there`,
      at: source.at([...work.path, end]),
      hint: `${begin}, or check the tests (unit, angle)`,
    },
  ];
}

/** What is wrong with lowering more than is lifted. */
function heavierProblems(
  source: Source,
  work: LiftWork,
  { load, heaviest }: PlannedLowering,
  lifted: number,
): Problem[] {
  if (load > heaviest) return [tooHeavyToLower(source, work, 'lowering load', load, heaviest)];
  if (load > lifted) return [];
  return [
    {
      code: 'light-lowering',
      message: `the lowering load of ${kg(load)} is not more than the ${kg(lifted)} that are lifted`,
      at: source.at([...work.path, 'lowering load']),
      hint: `write more than ${kg(lifted)}, or leave lowering load out`,
    },
  ];
}

function tooHeavyToLower(
  source: Source,
  work: LiftWork,
  key: 'load' | 'lowering load',
  load: number,
  most: number,
): Problem {
  // What can just be lowered is a single, as what can just be lifted is.
  const once = key === 'load' && work.reps > 1 ? ' for one repetition and less for more' : '';
  const [limit, advice] =
    most < 1
      ? ['the body alone', 'write load: body weight']
      : [`about ${Math.floor(most)} kg`, `write at most ${Math.floor(most)} kg${once}`];
  return {
    code: 'too-heavy',
    message: `${kgAbove(load, most)} is more than can be lowered under control: the most in the ${work.lift} from ${degreesOf(work.from)} to ${degreesOf(work.to)} is ${limit}`,
    at: source.at([...work.path, key]),
    hint: `${advice}, or shorten the range`,
  };
}

function holdProblems(source: Source, work: HoldWork, { state, effort }: HeldLoad): Problem[] {
  if (state === 'found') return [];
  const at = degreesOf(work.at);
  const messages = {
    unbalanced: `the ${work.of} cannot be held in balance at ${at}`,
    'nothing asked': `no weight makes the ${work.of} hard to hold at ${at}: it hangs or stands over the joint`,
    'too heavy': `the ${work.of} cannot be held at ${at}: the body alone asks ${Math.round(100 * effort)} % of what the muscles can give`,
  };
  return [
    {
      code: 'empty-hold',
      message: messages[state],
      at: source.at([...work.path, 'at']),
      hint: 'choose another angle, or hold the joint action itself (hold: knee extension)',
    },
  ];
}

/** A range that this body cannot go through in balance, with the part of it that it can. */
export function unbalanced(
  source: Source,
  entry: LiftWork | LiftTest,
  lift: Lift,
  body: Body,
): Problem {
  const from = entry.from ?? (lift.rangeDeg[0] * Math.PI) / 180;
  const ends = [from, entry.to].map((angle) => (angle * 180) / Math.PI);
  const held = balancedStretch(lift, body, [Math.min(...ends), Math.max(...ends)]);
  const nearest = held ? `; it can be from ${Math.round(held[0])}° to ${Math.round(held[1])}°` : '';
  return {
    code: 'cannot-balance',
    message: `the ${entry.lift} to ${degreesOf(entry.to)} cannot be held in balance over the foot with this body${nearest}`,
    at: source.at([...entry.path, 'to']),
    hint: 'check the segment lengths and the ankle limit, or end the range earlier',
  };
}

function tooHeavy(source: Source, work: LiftWork, load: number, plan: PlannedExercise): Problem {
  const { exercise, heaviest } = plan;
  const most = exercise.kind === 'lift' ? exercise.heaviest : 0;
  const known = plan.tested ? 'tested' : 'predicted';
  const where = heaviest
    ? `, lost at ${degreesOf(heaviest.at.angle)} by the ${actions[heaviest.at.action].muscles}`
    : '';
  const on = plan.rigUse ? ', with the same chains or bands on' : '';
  const key = work.load.kind === 'reserve' ? 'reserve' : 'load';
  return {
    code: 'too-heavy',
    message: `${kgAbove(load, most)} is more than this posture can hold: the heaviest ${work.lift} from ${degreesOf(work.from)} to ${degreesOf(work.to)} is ${kg(most)} (${known}${where}${on})`,
    at: source.at([...work.path, key]),
    hint: 'lower the load, shorten the range, or add a tested best for this range if it is higher',
  };
}

const degreesOf = (angle: number) => `${Math.round((angle * 180) / Math.PI)}°`;
const metres = (length: number) => `${length.toFixed(2)} m`;
/** To half kilograms, as the reports say it. */
const kg = (mass: number) => `${Math.round(2 * mass) / 2} kg`;
/** A load that is more than another: to a tenth upward where half kilograms do not tell them apart. */
const kgAbove = (load: number, most: number) =>
  kg(load) === kg(most) ? `${Math.ceil(10 * load - 1e-9) / 10} kg` : kg(load);
