/**
 * A report as data: sections of blocks in the order a colleague reads them. Renderers turn the
 * same value into markdown, terminal text or JSON; nothing here computes.
 */

export interface Column {
  readonly head: string;
  readonly align: 'left' | 'right';
}

export type Block =
  | { readonly kind: 'text'; readonly text: string }
  /** The coach's own, obeyed: kept as written. */
  | { readonly kind: 'markdown'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | {
      readonly kind: 'table';
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly string[])[];
    }
  | { readonly kind: 'chart'; readonly chart: Chart }
  | { readonly kind: 'map'; readonly map: HeatMap };

/** A line chart over an axis of angles in degrees, or of what its `axis` says. */
export interface Chart {
  /** What is drawn and in which unit, for example "gain (%)". */
  readonly title: string;
  readonly x: readonly number[];
  /** What `x` is and in which unit, for example "mass (kg)"; degrees when left out. */
  readonly axis?: string;
  readonly series: readonly {
    readonly name: string;
    readonly y: readonly number[];
    /** A sign of its own; several curves may share one, and then are named once. */
    readonly mark?: string;
  }[];
  /** The target range, marked under an axis of degrees; its name ("target") does not repeat the angles. */
  readonly band?: { readonly fromDeg: number; readonly toDeg: number; readonly name: string };
}

/** Numbers over two inputs, one down and one across; missing where there is no answer. */
export interface HeatMap {
  readonly rows: readonly string[];
  readonly columns: readonly string[];
  readonly values: readonly (readonly (number | undefined)[])[];
  /**
   * Where values are amounts of something: shades count from nothing to `most`, which several maps
   * may share, and what rounds to zero is a sign that means `none`.
   */
  readonly amounts?: { readonly most: number; readonly decimals: number; readonly none: string };
}

export interface Section {
  /** Empty for what has no heading of its own. */
  readonly heading: string;
  readonly blocks: readonly Block[];
}

export interface Report {
  readonly title: string;
  readonly sections: readonly Section[];
}
