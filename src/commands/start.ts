import { dirname } from 'node:path';
import { scenarioJsonSchema } from '../notebook/scenarioJsonSchema.ts';
import { startingScenario } from '../notebook/startingScenario.ts';
import { isFolder, readIfThere, writeWhole } from './files.ts';
import { refuse } from './refuse.ts';

/** Writes a new scenario; never over a file that is there. */
export function start(file: string): void {
  if (readIfThere(file) !== undefined || isFolder(file)) {
    refuse(`${file} is there already; name another file`);
    return;
  }
  if (writeWhole(dirname(file), file, startingScenario))
    process.stderr.write(`scenario: ${file}\nfill it in, then run: torqueleaf report ${file}\n`);
}

/** Prints the JSON Schema of a scenario. */
export function printSchema(): void {
  process.stdout.write(`${JSON.stringify(scenarioJsonSchema(), null, 1)}\n`);
}
