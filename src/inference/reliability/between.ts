/** A value with the interval it is known to. */
export interface Between {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** The same after a rising change of scale. */
export const eachEnd = ({ value, low, high }: Between, f: (x: number) => number): Between => ({
  value: f(value),
  low: f(low),
  high: f(high),
});

/** A value and so much to both sides of it. */
export const around = (value: number, reach: number): Between => ({
  value,
  low: value - reach,
  high: value + reach,
});
