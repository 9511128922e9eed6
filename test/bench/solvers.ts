/**
 * Microseconds per posture for sharing torques between muscles and for the limit of a posture, over
 * the catalogue's lifts, and the two small solvers against the general libraries they are tested
 * with, on those postures and on random problems. The machine is noisy: rounds are interleaved and
 * the ratios are what counts. Run: `node --import tsx test/bench/solvers.ts`.
 */

import type { Demand } from '../../src/mechanics/demand.ts';
import { largestMultiple } from '../../src/numeric/boxLinearProgram.ts';
import { minimiseWeightedSquares } from '../../src/numeric/boxQuadraticProgram.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { demandsOver, heaviestLoad } from '../../src/physiology/heaviestLoad.ts';
import { livingArea } from '../../src/physiology/muscleGeometry.ts';
import { muscleTorques, sharedJoints } from '../../src/physiology/muscleTorques.ts';
import { leastEffort, sharedLoad } from '../../src/physiology/sharing.ts';
import { restingCapacity } from '../../src/physiology/trainedState.ts';
import { lifts } from '../../src/tables/lifts.ts';
import { muscles } from '../../src/tables/muscles.ts';
import {
  byLinearLibrary,
  byQuadprog,
  linearModel,
  quadprogArguments,
  type RandomProblem,
  randomProblem,
  seeded,
} from '../numeric/libraries.ts';
import { meanPerson } from '../studies/meanPerson.ts';

const rounds = 15;
const person = meanPerson('male', true);
const capacity = restingCapacity(person);

/** Postures of lifts that ask two joints or more, with 70 % of the heaviest load. */
function tiedPostures(): Demand[] {
  return lifts.flatMap((lift) => {
    const [from, to] = lift.rangeDeg.map(toRadians) as [number, number];
    const load = 0.7 * heaviestLoad({ lift, from, to }, person.body, capacity).load;
    return demandsOver({ lift, from, to }, person.body, load).flatMap(({ asked }) =>
      'impossible' in asked || rowsOf(asked).length < 2 ? [] : [asked],
    );
  });
}

const rowsOf = (asked: Demand) => sharedJoints.filter((joint) => (asked.torques[joint] ?? 0) !== 0);

/** The sharing problem of a posture: muscles that cross its joints, its torques as target and slope. */
function problemOf(asked: Demand): RandomProblem {
  const joints = rowsOf(asked);
  const torques = muscleTorques(asked, capacity);
  const used = muscles.flatMap((_, i) => (joints.some((j) => torques[j][i] !== 0) ? [i] : []));
  return {
    rows: joints.map((joint) => used.map((i) => torques[joint][i] ?? 0)),
    target: joints.map((joint) => asked.torques[joint] ?? 0),
    slope: joints.map((joint) => asked.torques[joint] ?? 0),
    weights: used.map((i) => livingArea(muscles[i] as (typeof muscles)[number])),
    upper: used.map(() => 1),
  };
}

/** Median microseconds a problem for each way, rounds interleaved after three to warm up. */
function timed(ways: Readonly<Record<string, () => () => void>>, count: number) {
  const spent = new Map<string, number[]>(Object.keys(ways).map((name) => [name, []]));
  for (let round = -3; round < rounds; round++)
    for (const [name, prepare] of Object.entries(ways)) {
      const work = prepare();
      const start = process.hrtime.bigint();
      work();
      const each = Number(process.hrtime.bigint() - start) / 1e3 / count;
      if (round >= 0) spent.get(name)?.push(each);
    }
  return (name: string) => {
    const sorted = [...(spent.get(name) ?? [])].sort((a, b) => a - b);
    return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  };
}

function compareSolvers(what: string, problems: readonly RandomProblem[]): void {
  // Libraries get their arguments ready made, fresh every round: quadprog overwrites them.
  const zero = problems.map(({ rows }) => rows.map(() => 0));
  const linear = problems.map((problem, i) => linearModel({ ...problem, target: zero[i] ?? [] }));
  const median = timed(
    {
      'sharing, own': () => () => {
        for (const { rows, target, weights, upper } of problems)
          minimiseWeightedSquares(rows, target, weights, upper);
      },
      'sharing, quadprog': () => {
        const prepared = problems.map(quadprogArguments);
        return () => {
          for (const one of prepared) byQuadprog(one);
        };
      },
      'limit, own': () => () => {
        for (const [i, { rows, slope, upper }] of problems.entries())
          largestMultiple(rows, zero[i] ?? [], slope, upper);
      },
      'limit, javascript-lp-solver': () => () => {
        for (const model of linear) byLinearLibrary(model);
      },
    },
    problems.length,
  );
  for (const [task, library] of [
    ['sharing', 'quadprog'],
    ['limit', 'javascript-lp-solver'],
  ]) {
    const [own, other] = [median(`${task}, own`), median(`${task}, ${library}`)];
    console.log(
      `${what}, ${task}: own ${own.toFixed(1)} µs, ${library} ${other.toFixed(1)} µs, ${(other / own).toFixed(1)} × own`,
    );
  }
}

const postures = tiedPostures();
const whole = timed(
  {
    torques: () => () => {
      for (const asked of postures) muscleTorques(asked, capacity);
    },
    sharing: () => () => {
      for (const asked of postures) sharedLoad(asked, capacity);
    },
    limit: () => () => {
      for (const asked of postures) leastEffort(asked, capacity);
    },
  },
  postures.length,
);
console.log(
  `${postures.length} postures that tie two or three joints, µs a posture: torque of every muscle ${whole('torques').toFixed(1)}; with sharing ${whole('sharing').toFixed(1)}; with the limit ${whole('limit').toFixed(1)}`,
);
compareSolvers('postures', postures.map(problemOf));
const random = seeded(1);
compareSolvers(
  'random',
  Array.from({ length: 500 }, () => randomProblem(random)),
);
