import type { Path } from './scenario.ts';

/** The sections that a notebook may name; each stands for one or more headings of the report. */
export const sectionNames = [
  'which program',
  'where the gains land',
  'torque before and after',
  'why',
  'calendar',
  'programs',
  'heaviest singles',
  'measured and assumed',
  'disagreements',
] as const;

export type SectionName = (typeof sectionNames)[number];

/** What a block of the notebook may be; each is the one key of its entry. */
export const blockNames = ['text', 'cells', 'chart', 'table', 'section'] as const;

/** One block of the notebook, in the coach's order. */
export type NotebookBlock =
  /** Markdown, kept as written. */
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'cells'; readonly names: readonly string[] | 'all' }
  /** A cell that is a list over angles. */
  | { readonly kind: 'chart'; readonly name: string; readonly path: Path }
  /** Such cells side by side. */
  | {
      readonly kind: 'table';
      readonly columns: readonly { readonly name: string; readonly path: Path }[];
    }
  | { readonly kind: 'section'; readonly name: SectionName };
