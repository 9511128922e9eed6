import { formatProblems } from '../notebook/problem.ts';
import { comparePage } from '../page/comparePage.ts';
import { renderTerminal } from '../page/terminal.ts';
import { compare } from '../questions/compare.ts';
import { readPair } from './gitRevision.ts';
import { refuse } from './refuse.ts';
import { width } from './width.ts';

/** Prints what two scenarios answer differently; exits 1 if either has problems. */
export async function compareTwo(first: string, second?: string): Promise<void> {
  const pair = readPair(first, second);
  if ('fault' in pair) {
    refuse(pair.fault);
    return;
  }
  const { compared, problems } = await compare(pair.a, pair.b);
  if (compared) {
    process.stdout.write(`${renderTerminal(comparePage(compared), width())}\n`);
    return;
  }
  const textOf = (file: string) => [pair.a, pair.b].find((one) => one.file === file)?.text;
  process.stderr.write(`${formatProblems(problems, textOf)}\n`);
  process.exitCode = 1;
}
