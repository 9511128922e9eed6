/** Random problems R·x = b, 0 ≤ x ≤ u, and the library solvers that tests and benches compare with. */
import solver from 'javascript-lp-solver';
import quadprog from 'quadprog';

export interface RandomProblem {
  readonly rows: number[][];
  readonly target: number[];
  readonly slope: number[];
  readonly weights: number[];
  readonly upper: number[];
}

/** Uniform numbers in 0..1 (mulberry32 of T. Ettinger, public domain). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Σ row·x of each row. */
export const times = (rows: readonly (readonly number[])[], x: readonly number[]) =>
  rows.map((row) => row.reduce((sum, value, i) => sum + value * (x[i] ?? 0), 0));

/**
 * 1..4 rows of mixed signs, 3..14 unknowns (at least as many as rows, for quadprog refuses redundant
 * equations). Two in three have a target that some x within the bounds meets.
 */
export function randomProblem(random: () => number): RandomProblem {
  const m = 1 + Math.floor(random() * 4);
  const n = Math.max(m, 3 + Math.floor(random() * 12));
  const list = <Value>(length: number, value: () => Value) => Array.from({ length }, value);
  const rows = list(m, () => list(n, () => 2 * random() - 1));
  const upper = list(n, () => 0.1 + 2 * random());
  const inside = upper.map((u) => u * random());
  const fits = random() < 2 / 3;
  return {
    rows,
    target: fits ? times(rows, inside) : list(m, () => (2 * random() - 1) * 0.3 * n),
    slope: list(m, () => 2 * random() - 1),
    weights: list(n, () => 10 ** (2 * random() - 1)),
    upper,
  };
}

const oneBased = <Value>(values: readonly Value[]): Value[] => [
  undefined as unknown as Value,
  ...values,
];

/**
 * Arguments of quadprog for least Σ w·x², made apart so that a bench can time the solver alone. For one
 * call only: quadprog overwrites them.
 */
export function quadprogArguments({ rows, target, weights, upper }: RandomProblem) {
  const unit = (i: number, value: number) => upper.map((_, j) => (i === j ? value : 0));
  const constraints = [
    ...rows,
    ...upper.map((_, i) => unit(i, 1)),
    ...upper.map((_, i) => unit(i, -1)),
  ];
  return [
    oneBased(weights.map((w, i) => oneBased(unit(i, 2 * w)))),
    oneBased(upper.map(() => 0)),
    oneBased(upper.map((_, i) => oneBased(constraints.map((row) => row[i] ?? 0)))),
    oneBased([...target, ...upper.map(() => 0), ...upper.map((u) => -u)]),
    rows.length,
  ] as const;
}

/** @returns x, or undefined if quadprog says that nothing fits */
export function byQuadprog(prepared: ReturnType<typeof quadprogArguments>): number[] | undefined {
  const { solution, message } = quadprog.solveQP(...prepared);
  if (message === 'constraints are inconsistent, no solution!') return undefined;
  if (message !== '') throw new Error(message);
  return solution.slice(1);
}

/** Model of javascript-lp-solver for the largest or least λ with R·x = target + λ·slope. */
export function linearModel(
  { rows, target, slope, upper }: RandomProblem,
  opType: 'max' | 'min' = 'max',
) {
  const multiple: Record<string, number> = { goal: 1 };
  const variables: Record<string, Record<string, number>> = { multiple };
  const constraints: Record<string, { equal?: number; max?: number }> = {};
  rows.forEach((_, r) => {
    constraints[`row${r}`] = { equal: target[r] ?? 0 };
    multiple[`row${r}`] = -(slope[r] ?? 0);
  });
  upper.forEach((u, i) => {
    const column = rows.map((row, r) => [`row${r}`, row[i] ?? 0] as const);
    variables[`x${i}`] = { ...Object.fromEntries(column), [`upper${i}`]: 1 };
    constraints[`upper${i}`] = { max: u };
  });
  return { optimize: 'goal', opType, variables, constraints };
}

/** Its types describe its CommonJS file; the module Node loads has `Solve` on the default export. */
const linearSolver = solver as unknown as {
  Solve(model: ReturnType<typeof linearModel>): {
    readonly feasible: boolean;
    readonly result: number;
  };
};

/** @returns λ, or undefined if the library says that nothing fits; it rounds to 8 decimals */
export function byLinearLibrary(model: ReturnType<typeof linearModel>): number | undefined {
  const { feasible, result } = linearSolver.Solve(model);
  return feasible ? result : undefined;
}
