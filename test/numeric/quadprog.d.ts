/** The part of quadprog 1.6.1 that tests use; all arrays count from 1. */
declare module 'quadprog' {
  /** Minimises ½·xᵀ·D·x − dᵀ·x subject to Aᵀ·x ≥ b, the first `equalities` of them equal. */
  export function solveQP(
    quadratic: readonly (readonly number[])[],
    linear: readonly number[],
    columns: readonly (readonly number[])[],
    sides: readonly number[],
    equalities: number,
  ): { readonly solution: readonly number[]; readonly message: string };
}
