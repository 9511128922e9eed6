/** What the model finds wrong with a scenario that reads well: each problem at its place. */
import { type Calibration, isPlausible } from './inference/calibrateLifts.ts';
import { balancedStretch } from './mechanics/balancedStretch.ts';
import type { Lift } from './mechanics/lift.ts';
import type { Body } from './mechanics/posture.ts';
import type { Problem } from './notebook/problem.ts';
import type { HoldWork, LiftTest, LiftWork, Program } from './notebook/scenario.ts';
import type { Source } from './notebook/source.ts';
import type { HeldLoad, PlannedExercise } from './physiology/planProgram.ts';
import { actions } from './tables/actions.ts';
import { jointReachDeg } from './tables/segmentEnds.ts';

/** Tested singles that sit oddly beside the other tests: allowed, but worth a look. */
export function testRemarks(
  source: Source,
  test: LiftTest,
  calibrations: readonly Calibration[],
  place: number,
): Problem[] {
  const own = calibrations[place];
  if (!own || isPlausible(own.factor, calibrations, test.lift)) return [];
  return [
    {
      code: 'odd-test',
      message: `the tested ${test.lift} of ${kg(test.best)} to ${degreesOf(test.to)} does not fit what is known of this athlete’s strength: expected about ${kg(own.predicted)}`,
      at: source.at([...test.path, 'best']),
      hint: 'check unit, depth and date; forecasts for this lift rest on it',
    },
  ];
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
): Problem[] {
  return program.work.flatMap((work, i) => {
    const plan = planned[i];
    if (!plan) return [];
    if (work.kind === 'hold') return plan.hold ? holdProblems(source, work, plan.hold) : [];
    if (plan.exercise.kind !== 'lift') return [];
    const { load, heaviest } = plan.exercise;
    if (heaviest <= 0)
      return [
        plan.weak === undefined
          ? unbalanced(source, work, work.lift)
          : tooWeak(source, work, plan.weak),
      ];
    if (heaviest > mostSensible) return [nothingAsked(source, work)];
    return load > heaviest ? [tooHeavy(source, work, load, plan)] : [];
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
  return {
    code: 'too-weak',
    message: `by what is known of this athlete’s strength the ${work.lift} cannot be held at ${degreesOf(at)} even without a load${nearest}`,
    at: source.at([...work.path, held && held[0] > work.from ? 'from' : 'to']),
    hint: 'keep the range within what can be held, check the tests (unit, angle), or add a tested best for this range',
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

export function unbalanced(source: Source, entry: LiftWork | LiftTest, lift: string): Problem {
  return {
    code: 'cannot-balance',
    message: `the ${lift} to ${degreesOf(entry.to)} cannot be held in balance over the foot with this body`,
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
  const key = work.load.kind === 'reserve' ? 'reserve' : 'load';
  return {
    code: 'too-heavy',
    message: `${kg(load)} is more than this posture can hold: the heaviest ${work.lift} from ${degreesOf(work.from)} to ${degreesOf(work.to)} is ${kg(most)} (${known}${where})`,
    at: source.at([...work.path, key]),
    hint: 'lower the load, shorten the range, or add a tested best for this range if it is higher',
  };
}

const degreesOf = (angle: number) => `${Math.round((angle * 180) / Math.PI)}°`;
const kg = (mass: number) => `${mass.toFixed(mass < 100 ? 1 : 0)} kg`;
