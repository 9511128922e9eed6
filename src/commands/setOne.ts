import { dirname } from 'node:path';
import type { Source } from '../notebook/text/source.ts';
import { setPage } from '../page/setPage.ts';
import { renderTerminal } from '../page/terminal.ts';
import { type SetValue, setValue, type Written } from '../questions/setValue.ts';
import { failWith, open, printProblems } from './evaluate.ts';
import { read, readIfThere, type ScenarioFile, writeWhole } from './files.ts';
import { refuse } from './refuse.ts';
import { width } from './width.ts';

/** Writes one value into a scenario; exits 1 and writes nothing if it would make the file wrong. */
export async function setOne(file: string, place: string, value: string): Promise<void> {
  const [scenario] = read([file]);
  if (scenario) await putInFile(scenario, place, value);
}

/**
 * Puts a value into a scenario's file and prints what changed.
 *
 * @returns what it came to if it was written
 */
export async function putInFile(
  scenario: ScenarioFile,
  place: string,
  value: string,
): Promise<SetValue | undefined> {
  const { file } = scenario;
  const source = open(scenario);
  if (!source) return undefined;
  const made = await setValue(source, place, value);
  if (made.fault !== undefined) {
    refuse(made.fault);
    return undefined;
  }
  if (made.problems) {
    failWith(made.problems, [made]);
    process.stderr.write(`${file} was left as it is\n`);
    return undefined;
  }
  const { written } = made;
  if (!isWritten(written, source)) return undefined;
  process.stdout.write(renderTerminal(setPage(written, file, made.change), width()));
  printProblems(made.remarks, [written.source]);
  if (!made.results) process.exitCode = 1;
  return made;
}

/** Writes a file's new text if it still holds the old one; a byte order mark stays. */
function isWritten({ file, text, isSame }: Written, { texts }: Source): boolean {
  if (isSame) return true;
  const now = readIfThere(file) ?? '';
  const mark = now.startsWith('\ufeff') ? '\ufeff' : '';
  if (now.slice(mark.length) !== texts.get(file))
    return isRefused(`${file} was saved by someone else meanwhile; run this again`);
  if (now.includes('\ufffd'))
    return isRefused(`${file} has signs that are not UTF-8; save it as UTF-8 first`);
  return writeWhole(dirname(file), file, mark + text, 'is it write-protected?');
}

function isRefused(message: string): false {
  refuse(message);
  return false;
}
