import type { Place } from '../../notebook/text/problem.ts';
import type { TableRow } from '../../tables/rowsBehind.ts';

/** A number or text of the tree behind an answer, and what it comes from. */
export interface TraceNode {
  readonly what: string;
  /** As shown. */
  readonly value?: string;
  /** Where it is written. */
  readonly at?: Place;
  /** Why it is so where nobody wrote it: a default, an estimate. */
  readonly assumed?: string;
  readonly table?: TableRow;
  /** One object stands for one thing: it may be part of several. */
  readonly parts: readonly TraceNode[];
}

/** A table as a leaf of the tree. */
export const tableNode = (table: TableRow): TraceNode => ({ what: table.what, table, parts: [] });
