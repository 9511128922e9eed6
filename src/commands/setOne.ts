import { dirname } from 'node:path';
import { setPage } from '../page/setPage.ts';
import { renderTerminal } from '../page/terminal.ts';
import { type SetValue, setValue } from '../questions/setValue.ts';
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
    failWith(made.problems, [{ ...scenario, text: made.text }]);
    process.stderr.write(`${file} was left as it is\n`);
    return undefined;
  }
  if (!isWritten(scenario, made.written.text)) return undefined;
  const page = setPage(made.written, made.written.text === source.text, made.change);
  process.stdout.write(renderTerminal(page, width()));
  printProblems(made.remarks, [{ file, text: made.written.text }]);
  if (!made.results) process.exitCode = 1;
  return made;
}

/** Writes a new text if the file still holds the old one; a byte order mark stays. */
function isWritten({ file, text }: ScenarioFile, next: string): boolean {
  const mark = text.startsWith('\ufeff') ? '\ufeff' : '';
  if (mark + next === text) return true;
  if (text.includes('\ufffd'))
    return isRefused(`${file} has signs that are not UTF-8; save it as UTF-8 first`);
  if (readIfThere(file) !== text)
    return isRefused(`${file} was saved by someone else meanwhile; run this again`);
  return writeWhole(dirname(file), file, mark + next, 'is it write-protected?');
}

function isRefused(message: string): false {
  refuse(message);
  return false;
}
