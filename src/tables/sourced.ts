/**
 * How a number is known. `read`: seen in the source or a page that quotes it; `recalled`: from
 * memory, not seen, to be checked; `derived`: arithmetic on other rows; `fitted`: estimated by
 * this project from the studies named; `prior`: a judgement where nothing is published.
 */
export type Knowledge = 'read' | 'recalled' | 'derived' | 'fitted' | 'prior';

/** One published or chosen number with its unit, its spread (one standard deviation) and origin. */
export interface Sourced {
  readonly value: number;
  readonly unit: string;
  /** One standard deviation, or half the range of conflicting sources; same unit as the value. */
  readonly spread: number;
  readonly known: Knowledge;
  readonly source: string;
}
