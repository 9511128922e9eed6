import { comparePage } from '../page/comparePage.ts';
import { programsPage } from '../page/programsPage.ts';
import { renderTerminal } from '../page/terminal.ts';
import { compare } from '../questions/compare.ts';
import { comparePrograms } from '../questions/comparePrograms.ts';
import { failWith, open } from './evaluate.ts';
import { readNamed, readPair } from './gitRevision.ts';
import { refuse } from './refuse.ts';
import { width } from './width.ts';

/** Prints what two scenarios answer differently; exits 1 if either has problems. */
export async function compareTwo(
  first: string,
  second?: string,
  { programs }: { readonly programs?: readonly string[] } = {},
): Promise<void> {
  if (programs) {
    await compareInOne(first, second, programs);
    return;
  }
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

/** Prints what two programs of one scenario differ in and what each is expected to do. */
async function compareInOne(
  file: string,
  second: string | undefined,
  [a, b, ...more]: readonly string[],
): Promise<void> {
  if (second !== undefined || a === undefined || b === undefined || more.length > 0) {
    refuse('write one scenario and two of its programs: compare FILE --programs "A" "B"');
    return;
  }
  const scenario = readNamed(file);
  if ('fault' in scenario) {
    refuse(scenario.fault);
    return;
  }
  const source = open(scenario);
  if (!source) return;
  const { compared, fault, problems } = await comparePrograms(source, a, b);
  if (compared) process.stdout.write(`${renderTerminal(programsPage(compared), width())}\n`);
  else if (problems) failWith(problems, [source]);
  else refuse(fault);
}
