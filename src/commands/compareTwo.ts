import { comparePage } from '../page/comparePage.ts';
import { renderTerminal } from '../page/terminal.ts';
import { compare } from '../questions/compare.ts';
import { failWith, open } from './evaluate.ts';
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
  const [a, b] = [open(pair.a), open(pair.b)];
  if (!a || !b) return;
  const { compared, problems } = await compare(a, b);
  if (compared) process.stdout.write(`${renderTerminal(comparePage(compared), width())}\n`);
  else failWith(problems, [a, b]);
}
