import type { Body } from '../mechanics/posture.ts';
import type { LiftWork, Program } from '../notebook/scenario.ts';
import type { Problem } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';
import type { LiftExercise } from '../physiology/exercise.ts';
import type { PlannedExercise } from '../physiology/planProgram.ts';
import { actions } from '../tables/actions.ts';
import { degreesOf, kg, kgAbove, stretchOf } from './amounts.ts';
import { unbalanced } from './balanceProblems.ts';
import { holdProblems } from './holdProblems.ts';
import { heavierProblems, loweredProblems } from './loweringProblems.ts';
import { rigProblems, unbalancedRig } from './rigProblems.ts';

/** What the model says cannot be done, each at its place in the file. */
export function loadProblems(
  source: Source,
  program: Program,
  planned: readonly PlannedExercise[],
  body: Body,
): Problem[] {
  return program.work.flatMap((work, i) => {
    const plan = planned[i];
    if (work.kind === 'hold') return plan?.hold ? holdProblems(source, work, plan.hold) : [];
    if (work.kind !== 'lift' || plan?.exercise.kind !== 'lift') return [];
    return liftProblems(source, work, plan, plan.exercise, body);
  });
}

function liftProblems(
  source: Source,
  work: LiftWork,
  plan: PlannedExercise,
  { load, heaviest, range }: LiftExercise,
  body: Body,
): Problem[] {
  const { lowering, weak, rigUse } = plan;
  if (work.lowerOnly && lowering)
    return lowering.control.state === 'unbalanced'
      ? [unbalanced(source, work, range.lift, body)]
      : loweredProblems(source, work, lowering);
  const light = bodyProblem(source, work, plan, load);
  if (light) return [light];
  if (heaviest <= 0 && !plan.tested) {
    if (weak) return [tooWeak(source, work, weak)];
    const { unbalancedAt } = rigUse ?? {};
    return unbalancedAt === undefined
      ? [unbalanced(source, work, range.lift, body)]
      : [unbalancedRig(source, work, range.lift, load, unbalancedAt)];
  }
  if (heaviest > mostSensible) return [nothingAsked(source, work)];
  return [
    ...(load > heaviest
      ? [tooHeavy(source, work, load, heaviest, plan)]
      : rigProblems(source, work, plan, range.lift)),
    ...(lowering ? heavierProblems(source, work, lowering, load) : []),
  ];
}

/** A share, a repetition maximum or a reserve that comes to less than the body itself. */
function bodyProblem(
  source: Source,
  work: LiftWork,
  { wholeShare, tested, lessThanBody }: PlannedExercise,
  load: number,
): Problem | undefined {
  if (wholeShare === undefined || load > 0) return undefined;
  const lift = `${work.lift} ${stretchOf(work)}`;
  const at = source.at([...work.path, work.load.kind === 'reserve' ? 'reserve' : 'load']);
  if (work.load.kind === 'share' && tested) {
    const message = `the tested single of the ${lift} is the body alone, so a share of it is no load`;
    const hint = 'write load: body weight, or let bands help';
    return { code: 'no-share', message, at, hint };
  }
  if (!lessThanBody) return undefined;
  const { wanted, possible } = lessThanBody;
  const message = `by what is known of this athlete’s strength the ${lift} can be done about ${possible === 1 ? 'once' : `${possible} times`} with the body alone, so a load for ${wanted} is less than the body`;
  const hint = 'write load: body weight with fewer repetitions, or let bands help';
  return { code: 'less-than-body', message, at, hint };
}

/** No gym holds more, kg; a heavier single means that the load acts where it turns no joint. */
const mostSensible = 1400;

function nothingAsked(source: Source, work: LiftWork): Problem {
  return {
    code: 'nothing-asked',
    message: `no weight makes the ${work.lift} hard ${stretchOf(work)}: it turns no joint against its muscles there`,
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

function tooHeavy(
  source: Source,
  work: LiftWork,
  load: number,
  most: number,
  plan: PlannedExercise,
): Problem {
  const lost = plan.heaviest?.at;
  const known = plan.tested ? 'tested' : 'predicted';
  const where = lost
    ? `, lost at ${degreesOf(lost.angle)} by the ${actions[lost.action].muscles}`
    : '';
  const on = plan.rigUse ? ', with the same chains or bands on' : '';
  const key = work.load.kind === 'reserve' ? 'reserve' : 'load';
  return {
    code: 'too-heavy',
    message: `${kgAbove(load, most)} is more than this posture can hold: the heaviest ${work.lift} ${stretchOf(work)} is ${most > 0 ? kg(most) : 'the body alone'} (${known}${where}${on})`,
    at: source.at([...work.path, key]),
    hint: 'lower the load, shorten the range, or add a tested best for this range if it is higher',
  };
}
