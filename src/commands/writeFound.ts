import { cellText } from '../notebook/formula/cellText.ts';
import { short } from '../page/soughtText.ts';
import { ask } from '../questions/ask.ts';
import type { ScenarioFile } from './files.ts';
import { printableLines } from './printable.ts';
import { putInFile } from './setOne.ts';

/**
 * Writes a value that a search found, if there is no other, and prints what the formula comes to with
 * it: it is written with as few digits as it was printed, and may miss the goal a little.
 */
export async function writeFound(
  scenario: ScenarioFile,
  place: string,
  [only, ...others]: readonly string[],
  formula: string,
): Promise<void> {
  if (only === undefined || others.length > 0) {
    process.exitCode = 1;
    const why =
      only === undefined
        ? 'there is no such value'
        : 'there is more than one such value; choose one and write it with torqueleaf set';
    process.stderr.write(`nothing was written: ${why}\n`);
    return;
  }
  const made = await putInFile(scenario, place, short(only));
  if (!made?.written || !made.results) return;
  const answered = await ask(made.results, formula);
  if ('result' in answered)
    process.stdout.write(`${printableLines(`${formula} is now ${cellText(answered.result)}.`)}\n`);
}
