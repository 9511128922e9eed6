import { includes } from './includes.ts';
import type { HostileScenario } from './parts.ts';
import { sizes } from './sizes.ts';
import { tables } from './tables.ts';
import { files, formulas, words } from './texts.ts';
import { numbers, work } from './work.ts';
import { prototypes, yamlTricks } from './yaml.ts';

/** Every file of the corpus, by name. */
export const hostileScenarios: readonly HostileScenario[] = [
  ...yamlTricks,
  ...prototypes,
  ...sizes,
  ...numbers,
  ...work,
  ...formulas,
  ...words,
  ...files,
  ...includes,
  ...tables,
].map(([name, tries, text]) => ({ name, tries, text }));
