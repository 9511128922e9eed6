import type { Reading } from '../reading.ts';
import type { Path } from '../scenario.ts';
import { pathName } from '../valueName.ts';

/** Names that say how a table is read. */
const tableWords = ['columns', 'where', 'decimal', 'separator', 'angles'] as const;

/**
 * Refuses a test with no trials or with trials from two places, and words about a table without one.
 *
 * @param inline names under which trials may stand in the file itself; never throws
 */
export function checkTrialSource(
  reading: Reading,
  draft: object,
  inline: readonly string[],
  path: Path,
): void {
  const [first, ...more] = [...inline, 'trials from'].filter((name) => Object.hasOwn(draft, name));
  if (first === undefined) {
    const message = `${pathName(path)}.${inline[0]} is missing`;
    const hint =
      'add for example "trials: { 40 deg: [118, 121, 116] }", or "trials from: tests/sn04.csv"';
    reading.refuse([...path, 'trials'], { code: 'missing', message, hint });
  }
  for (const name of more) {
    const message = `${name} stands beside ${first}; trials come from one place`;
    reading.refuse([...path, name], {
      code: 'two-sources',
      message,
      hint: 'delete one',
      key: true,
    });
  }
  if (Object.hasOwn(draft, 'trials from')) return;
  for (const name of tableWords.filter((word) => Object.hasOwn(draft, word))) {
    const message = `${name} tells how a table is read, but there is no trials from`;
    const hint = `delete ${name}, or add "trials from: tests/sn04.csv"`;
    reading.refuse([...path, name], { code: 'no-table', message, hint, key: true });
  }
}
