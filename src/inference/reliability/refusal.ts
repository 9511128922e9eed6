/** Why something cannot be computed from the numbers given, in plain words. */
export interface Refusal {
  /** A short name that programs may rely on. */
  readonly refused: string;
  /** What is wrong, as a sentence for the coach. */
  readonly reason: string;
}

export function refusal(refused: string, reason: string): Refusal {
  return { refused, reason };
}

export function isRefusal(value: object): value is Refusal {
  return 'refused' in value;
}
