import { type Problem, sortProblems } from '../notebook/text/problem.ts';
import { readWithIncludes } from '../notebook/text/readWithIncludes.ts';
import type { Beside, Source } from '../notebook/text/source.ts';
import { type Results, runSource } from '../run.ts';
import { Memory } from '../stages/memory.ts';
import { type Change, changeBetween, type Evaluated } from './changes.ts';

/** What one text of a watched file came to, and the texts that its problems point into. */
export type Turn = Pick<Source, 'texts'> & Outcome;

type Outcome =
  | {
      readonly kind: 'problems';
      readonly problems: readonly Problem[];
      /** Whether an earlier text had none. */
      readonly isKnown: boolean;
    }
  /** The first text without problems. */
  | { readonly kind: 'first'; readonly results: Results; readonly remarks: readonly Problem[] }
  | {
      readonly kind: 'change';
      readonly change: Change;
      /** Those that were not there before. */
      readonly remarks: readonly Problem[];
      /** Whether the text before this one had problems. */
      readonly isMended: boolean;
    };

/**
 * A file over many saves: each text is compared with the last one that had no problems, and only what
 * it changed is computed again.
 */
export class Session {
  private readonly memory = new Memory();
  private readonly file: string;
  private readonly beside: Beside | undefined;
  private good: (Evaluated & { readonly remarks: readonly Problem[] }) | undefined;
  private hadProblems = false;

  constructor(file: string, beside?: Beside) {
    this.file = file;
    this.beside = beside;
  }

  /** Takes the next text of the file. */
  async next(text: string): Promise<Turn> {
    const { source, problems, texts } = readWithIncludes(this.file, text, this.beside);
    return { texts, ...(source ? await this.take(source) : this.refused(sortProblems(problems))) };
  }

  private async take(source: Source): Promise<Outcome> {
    const ran = await runSource(source, this.memory);
    if (!ran.results) return this.refused(ran.problems);
    const before = this.good;
    const { results } = ran;
    const remarks = [...ran.broken, ...ran.notes];
    this.good = { source, results, remarks };
    const isMended = this.hadProblems;
    this.hadProblems = false;
    if (!before) return { kind: 'first', results, remarks };
    return {
      kind: 'change',
      change: changeBetween(before, this.good),
      remarks: newAmong(remarks, before.remarks),
      isMended,
    };
  }

  private refused(problems: readonly Problem[]): Outcome {
    this.hadProblems = true;
    return { kind: 'problems', problems, isKnown: this.good !== undefined };
  }
}

/** Problems that were not there before, wherever they stood. */
export function newAmong(now: readonly Problem[], before: readonly Problem[]): Problem[] {
  const nameOf = ({ code, message }: Problem) => `${code} ${message}`;
  const known = new Set(before.map(nameOf));
  return now.filter((problem) => !known.has(nameOf(problem)));
}
