import { setTimeout as wait } from 'node:timers/promises';

/** Milliseconds between two looks, between two looks at a file being written, and until it is gone. */
const pace = { look: 200, settle: 60, gone: 2000 };

/**
 * Follows files until `stop`: looks at what they hold, because events differ by system and editor,
 * miss a save by renaming, and are not sent at all in shared folders.
 *
 * A file that is empty or missing is mostly being written just then: it counts only once it stays so.
 *
 * @param look what the files hold, the scenario first; undefined for one that is gone
 * @param start what the scenario held when it was evaluated
 * @param saved takes what the scenario holds now, undefined if it is gone
 */
export async function follow(
  look: () => Texts,
  start: string,
  saved: (text: string | undefined) => Promise<void>,
  stop: AbortSignal,
): Promise<void> {
  let known: Texts = [start, ...look().slice(1)];
  while (await isGoingOn(pace.look, stop)) {
    if (isSame(look(), known)) continue;
    const settled = await settle(look, stop);
    if (stop.aborted || isSame(settled, known)) continue;
    await saved(settled[0]);
    // The scenario may name more files now than before.
    known = [...settled, ...look().slice(settled.length)];
  }
}

type Texts = readonly (string | undefined)[];

/** Looks until two looks in a row agree, and for longer while something is missing. */
async function settle(look: () => Texts, stop: AbortSignal): Promise<Texts> {
  let before = look();
  for (let waited = 0; await isGoingOn(pace.settle, stop); waited += pace.settle) {
    const now = look();
    const isWhole = now.every((text) => text !== undefined && text.trim() !== '');
    if (isSame(now, before) && (isWhole || waited >= pace.gone)) break;
    before = now;
  }
  return before;
}

const isSame = (a: Texts, b: Texts) => a.length === b.length && a.every((text, i) => text === b[i]);

/** Waits, unless it is time to stop. */
async function isGoingOn(milliseconds: number, signal: AbortSignal): Promise<boolean> {
  await wait(milliseconds, undefined, { signal }).catch(() => undefined);
  return !signal.aborted;
}
