import type { Results } from '../run.ts';
import { liftingStrength, loweringStrength } from '../tables/movingStrength.ts';
import { speedRows, type TableRow } from '../tables/rowsBehind.ts';
import { percent } from './words.ts';

const everyWork = ({ ranking }: Results) => ranking.flatMap(({ program }) => program.program.work);

/** What is assumed of kinds of work that only some programs hold. */
export function workAssumptions(results: Results): string[] {
  const work = everyWork(results);
  const lowered = work.some((w) => w.kind === 'lift' && (w.lowerOnly || w.loweringLoad));
  const only = work.some((w) => w.kind === 'lift' && w.lowerOnly);
  const atSpeed = work.some((w) => w.kind === 'isokinetic');
  const limit = percent(loweringStrength.value / liftingStrength.value);
  return [
    ...(lowered
      ? [
          `Lowered under control: up to ${limit} of the torque of a heaviest single, because strength while lowering is taken as ${loweringStrength.value} and while lifting as ${liftingStrength.value} of that in a hold. From ${percent(loweringStrength.value)} of a single’s torque on, lowering counts as full effort. Common practice lowers at most 125 % of the single.`,
        ]
      : []),
    ...(only
      ? [
          'Work that is lowered only counts as no practice of the single; with the body alone every repetition is taken to go as far as the first.',
        ]
      : []),
    ...(atSpeed
      ? [
          'Isokinetic work: while lifting, torque falls with speed (77 % of a hold at 60°/s, 50 % at 180°/s, all joints alike); while lowering it is the same at any speed. The will counts in full at any speed; that torque falls within a set is left out.',
        ]
      : []),
  ];
}

/** Tables that only some kinds of work rest on. */
export function workSources(results: Results): readonly TableRow[] {
  return everyWork(results).some(({ kind }) => kind === 'isokinetic') ? speedRows : [];
}
