import type { Beside } from '../notebook/text/source.ts';
import { changePage, unheaded } from '../page/changePage.ts';
import { shortReport } from '../page/fullReport.ts';
import { renderTerminal } from '../page/terminal.ts';
import { Session, type Turn } from '../questions/session.ts';
import { printProblems } from './evaluate.ts';
import { read, readIfThere } from './files.ts';
import { follow } from './follow.ts';
import { width } from './width.ts';

/** Prints the ranking, then at each save what it changed; ends with Ctrl-C, exit 0. */
export async function watch(file: string): Promise<void> {
  const [scenario] = read([file]);
  if (!scenario) return;
  const { beside, lookBeside } = remembering(scenario.beside);
  const session = new Session(file, beside);
  const tell = async (text: string) => {
    const turn = await session.next(text);
    process.stdout.write(turnText(turn));
    const problems = turn.kind === 'problems' ? turn.problems : turn.remarks;
    printProblems(problems, [turn]);
  };
  await tell(scenario.text);
  process.stderr.write(`watching ${file}; Ctrl-C ends it\n`);
  const saved = async (text?: string) => {
    if (text === undefined) process.stderr.write(`\n${file} is gone; waiting for it\n`);
    else await tell(text);
  };
  await follow(() => [readIfThere(file), ...lookBeside()], scenario.text, saved, ended());
}

const spoilt =
  'Saved, but it has problems; the next save without any is compared with the last good one.';
const neverGood = 'The file has problems; the ranking comes with the first save without any.';

/** What one text of the file is worth saying; problems go elsewhere. */
function turnText(turn: Turn): string {
  switch (turn.kind) {
    case 'first':
      return `${renderTerminal(shortReport(turn.results), width())}\n`;
    case 'change':
      return `\n${turn.isMended ? 'The file reads again. ' : ''}Saved:\n${renderTerminal(changePage(turn.change), width())}`;
    case 'problems':
      return `\n${renderTerminal(unheaded([{ kind: 'text', text: turn.isKnown ? spoilt : neverGood }]), width())}`;
  }
}

/** Reads files that a scenario names, and reads them again: they are watched too. */
function remembering(beside: Beside = (name) => ({ fault: `${name} cannot be read` })) {
  const named = new Set<string>();
  const noting: Beside = (name) => {
    named.add(name);
    return beside(name);
  };
  const lookBeside = () =>
    [...named].map((name) => {
      const found = beside(name);
      return 'text' in found ? found.text : undefined;
    });
  return { beside: noting, lookBeside };
}

/** Aborted by Ctrl-C, by a polite kill, and when nobody reads any more. */
function ended(): AbortSignal {
  const ending = new AbortController();
  const end = () => ending.abort();
  process.once('SIGINT', end).once('SIGTERM', end);
  process.stdout.once('error', end);
  return ending.signal;
}
