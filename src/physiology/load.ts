import { shareForRepetitions } from './repetitions.ts';

/** How a program states a load. */
export type LoadRule =
  | { readonly kind: 'mass'; readonly mass: number }
  | { readonly kind: 'share'; readonly share: number }
  | { readonly kind: 'repetition maximum'; readonly reps: number }
  | { readonly kind: 'reserve'; readonly reps: number };

/** How a program states a load for the way down: kg, or more than is lifted by a share of it. */
export type LoweringRule =
  | { readonly kind: 'mass'; readonly mass: number }
  | { readonly kind: 'more'; readonly share: number };

/** Load of the way down in kg. @param lifted kg */
export function loweringLoadOf(rule: LoweringRule, lifted: number): number {
  return rule.kind === 'mass' ? rule.mass : (1 + rule.share) * lifted;
}

/**
 * Load in kg.
 *
 * @param heaviest heaviest single of the same lift over the same range, kg
 * @param reps repetitions of the set; used when the rule counts repetitions left undone
 */
export function loadOf(rule: LoadRule, heaviest: number, reps: number): number {
  if (rule.kind === 'mass') return rule.mass;
  if (rule.kind === 'share') return rule.share * heaviest;
  return shareForRepetitions(repetitionsOf(rule, reps)) * heaviest;
}

/**
 * Repetitions that a load allows, where that is how it is stated.
 *
 * @param reps repetitions of the set
 */
export function repetitionsOf(
  rule: Extract<LoadRule, { readonly reps: number }>,
  reps: number,
): number;
export function repetitionsOf(rule: LoadRule, reps: number): number | undefined;
export function repetitionsOf(rule: LoadRule, reps: number): number | undefined {
  if (rule.kind === 'reserve') return reps + rule.reps;
  return rule.kind === 'repetition maximum' ? rule.reps : undefined;
}
