/**
 * Lifts of which a large part of the working muscles is not in the tables, with those muscles in a
 * coach's words. What single is to be expected of them the model cannot judge; a tested single
 * stands against it as the better witness.
 */
const partlyModelled: Readonly<Record<string, string>> = {
  'chin-up': 'the muscles that pull the upper arm down',
};

/** The working muscles of a lift that are not in the tables, if they are a large part of it. */
export function notModelled(lift: string): string | undefined {
  return Object.hasOwn(partlyModelled, lift) ? partlyModelled[lift] : undefined;
}
