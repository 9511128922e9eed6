/** The values put at a place, as a chart or a map shows them. */
export interface SweptAxis {
  /** The unit that all values share; empty if they are bare numbers, texts or mixed. */
  readonly unit: string;
  /** The values without it. */
  readonly labels: readonly string[];
  /** The values as numbers, in that unit; none if some value is no number or they mix units. */
  readonly numbers?: readonly number[];
}

/** Reads values as they were written: "80 deg", "90 deg" are 80 and 90 in "deg". */
export function sweptAxis(values: readonly string[]): SweptAxis {
  const read = values.map((value) => /^\s*(-?\d+(?:\.\d+)?)\s*(.*?)\s*$/.exec(value));
  const unit = read[0]?.[2] ?? '';
  const parts = read.flatMap((part) => (part?.[2] === unit ? [part] : []));
  if (parts.length < values.length) return { unit: '', labels: values };
  return {
    unit,
    labels: parts.map(([, number = '']) => number),
    numbers: parts.map(([, number]) => Number(number)),
  };
}

/** A name with its unit behind it, "to (deg)". */
export const withUnit = (name: string, unit: string) => (unit === '' ? name : `${name} (${unit})`);

/** The last word of a place: "to" of "programs.deep squat.work.1.to". */
export const lastWord = (place: string) => place.split('.').at(-1) ?? place;
