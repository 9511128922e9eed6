/**
 * Microseconds per solve of the own solvers and of the libraries they are tested against, over the
 * same random problems. The machine is noisy: rounds are interleaved and the ratios are what counts.
 * Run: `node --import tsx test/bench/solvers.ts`.
 */
import { largestMultiple } from '../../src/numeric/boxLinearProgram.ts';
import { minimiseWeightedSquares } from '../../src/numeric/boxQuadraticProgram.ts';
import {
  byLinearLibrary,
  byQuadprog,
  linearModel,
  quadprogArguments,
  randomProblem,
  seeded,
} from '../numeric/libraries.ts';

const count = 500;
const rounds = 21;
const random = seeded(1);
const problems = Array.from({ length: count }, () => randomProblem(random));
// Libraries get their arguments ready made: only solving is timed.
let quadratic: ReturnType<typeof quadprogArguments>[] = [];
const linear = problems.map((problem) => linearModel(problem));

const solvers: Readonly<Record<string, () => void>> = {
  'least squares, own': () => {
    for (const { rows, target, weights, upper } of problems)
      minimiseWeightedSquares(rows, target, weights, upper);
  },
  'least squares, quadprog': () => {
    for (const prepared of quadratic) byQuadprog(prepared);
  },
  'largest multiple, own': () => {
    for (const { rows, target, slope, upper } of problems)
      largestMultiple(rows, target, slope, upper);
  },
  'largest multiple, javascript-lp-solver': () => {
    for (const model of linear) byLinearLibrary(model);
  },
};

const spent = new Map<string, number[]>(Object.keys(solvers).map((name) => [name, []]));
// The first three rounds let the compiler warm up.
for (let round = -3; round < rounds; round++) {
  // Fresh every round, for quadprog overwrites them.
  quadratic = problems.map(quadprogArguments);
  for (const [name, solve] of Object.entries(solvers)) {
    const start = process.hrtime.bigint();
    solve();
    const microseconds = Number(process.hrtime.bigint() - start) / 1e3 / count;
    if (round >= 0) spent.get(name)?.push(microseconds);
  }
}

const median = (name: string) => {
  const sorted = [...(spent.get(name) ?? [])].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
};
for (const task of ['least squares', 'largest multiple']) {
  const names = Object.keys(solvers).filter((name) => name.startsWith(task));
  const own = median(names[0] ?? '');
  for (const name of names)
    console.log(
      `${name}: ${median(name).toFixed(1)} µs a solve, ${(median(name) / own).toFixed(1)} × own`,
    );
}
