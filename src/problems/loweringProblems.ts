import type { LiftWork } from '../notebook/scenario.ts';
import type { Problem } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';
import { toDegrees } from '../numeric/degrees.ts';
import type { PlannedLowering } from '../physiology/planLowering.ts';
import { degreesOf, kg, kgAbove, stretchOf } from './amounts.ts';

/** What is wrong with work that is lowered only, by a body that can be balanced in it. */
export function loweredProblems(
  source: Source,
  work: LiftWork,
  { load, heaviest, control }: PlannedLowering,
): Problem[] {
  const range = `${work.lift} ${stretchOf(work)}`;
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
  const beginDeg = toDegrees(beginAt ?? 0);
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
export function heavierProblems(
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
    message: `${kgAbove(load, most)} is more than can be lowered under control: the most in the ${work.lift} ${stretchOf(work)} is ${limit}`,
    at: source.at([...work.path, key]),
    hint: `${advice}, or shorten the range`,
  };
}
