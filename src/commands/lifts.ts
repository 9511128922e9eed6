import { liftDrawing, liftList, liftPage } from '../page/liftPage.ts';
import { renderTerminal } from '../page/terminal.ts';
import { liftsByJoint, lookUpLift } from '../questions/lookUpLift.ts';
import { liftsKnownTo } from '../run.ts';
import { failWith, open } from './evaluate.ts';
import { read, type ScenarioFile } from './files.ts';
import { printableLines } from './printable.ts';
import { refuse } from './refuse.ts';
import { width } from './width.ts';

/** Prints the catalogue, or one lift with a drawing of its first and last posture. */
export async function showLifts(name?: string, file?: string): Promise<void> {
  const [scenario] = file === undefined ? [] : read([file]);
  const known = scenario && (await liftsIn(scenario));
  if (file !== undefined && !known) return;
  if (name === undefined) {
    process.stdout.write(`${renderTerminal(liftList(liftsByJoint(known)), width())}\n`);
    return;
  }
  const found = lookUpLift(name, known);
  if ('suggestion' in found) {
    const hint = found.suggestion === undefined ? '' : `; did you mean "${found.suggestion}"?`;
    refuse(`there is no lift "${name}"${hint}`);
    return;
  }
  process.stdout.write(
    `${printableLines(liftDrawing(found))}\n\n${renderTerminal(liftPage(found), width())}\n`,
  );
}

/** The lifts that a scenario may use; prints its problems. */
async function liftsIn(scenario: ScenarioFile) {
  const source = open(scenario);
  if (!source) return undefined;
  const found = await liftsKnownTo(source);
  if ('lifts' in found) return found.lifts;
  failWith(found.problems, [source]);
  return undefined;
}
