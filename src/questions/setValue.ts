import type { Problem } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';
import { type Written, writeValue } from '../notebook/text/writeValue.ts';
import { type Results, runSource } from '../run.ts';
import { Memory } from '../stages/memory.ts';
import { type Change, changeBetween } from './changes.ts';
import { newAmong } from './session.ts';

export type { Written } from '../notebook/text/writeValue.ts';

export type SetValue =
  | {
      readonly written: Written;
      /** Left out where the file had problems before, or has them still. */
      readonly change?: Change;
      readonly results?: Results;
      /** Old problems that remain, or new remarks. */
      readonly remarks: readonly Problem[];
      readonly fault?: undefined;
      readonly problems?: undefined;
    }
  | { readonly fault: string; readonly written?: undefined; readonly problems?: undefined }
  /** New ones, located in the text as it would be. */
  | {
      readonly problems: readonly Problem[];
      readonly texts: Source['texts'];
      readonly written?: undefined;
      readonly fault?: undefined;
    };

/**
 * Puts a value into the text of a file and evaluates the file before and after; the file itself is
 * not touched.
 *
 * @returns the new text and what it did to the answer, or why it would be wrong
 */
export async function setValue(source: Source, place: string, value: string): Promise<SetValue> {
  const made = writeValue(source, place, value);
  if (!made.written) return made;
  const { written } = made;
  const memory = new Memory();
  const [before, after] = [
    await runSource(source, memory),
    await runSource(written.source, memory),
  ];
  const fresh = newAmong(after.problems ?? [], before.problems ?? []);
  if (fresh.length > 0) return { problems: fresh, texts: written.source.texts };
  if (!after.results) return { written, remarks: after.problems };
  const old = before.results ? [...before.broken, ...before.notes] : [];
  const remarks = newAmong([...after.broken, ...after.notes], old);
  const { results } = after;
  if (!before.results) return { written, results, remarks };
  const a = { source, results: before.results };
  return {
    written,
    change: changeBetween(a, { source: written.source, results }),
    results,
    remarks,
  };
}
