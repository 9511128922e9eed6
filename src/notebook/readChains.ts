import { linkLimits } from '../tables/chainsAndBands.ts';
import { complete } from './complete.ts';
import type { Draft } from './draft.ts';
import type { Expected, Reading } from './reading.ts';
import { readNamed } from './readNamed.ts';
import type { ChainsFile } from './rigSchema.ts';
import type { Chains, Path } from './scenario.ts';

type ChainsDraft = NonNullable<Draft<ChainsFile>>;

const link: Expected = {
  dimension: 'length',
  example: '10 mm',
  least: linkLimits.least / 1000,
  most: linkLimits.most / 1000,
  bounds: `the table of chains goes from ${linkLimits.least} to ${linkLimits.most} mm; weigh a piece and write weighs: 2.2 kg/m instead`,
};
const weighs: Expected = {
  dimension: 'mass per length',
  example: '2.2 kg/m',
  least: 0.1,
  most: 30,
  bounds: 'a chain weighs between 0.1 and 30 kg a metre',
};
const length: Expected = {
  dimension: 'length',
  example: '1.8 m',
  least: 0.1,
  most: 6,
  bounds: 'a chain is between 0.1 m and 6 m long',
};
const cord: Expected = {
  dimension: 'length',
  example: '20 cm',
  least: 0,
  most: 2.5,
  bounds: 'a cord is between 0 m and 2.5 m long',
};

/**
 * Reads the chains that the coach has.
 *
 * @returns name → chains, those that could be read; problems are collected, never thrown
 */
export function readChains(
  reading: Reading,
  chains: Readonly<Record<string, Draft<ChainsFile>>> | undefined,
): Readonly<Record<string, Chains>> {
  return readNamed(chains, 'chains', (draft, path) => readPair(reading, draft, path));
}

function readPair(reading: Reading, draft: ChainsDraft, path: Path): Chains | undefined {
  return complete<Chains>({
    weight: readWeight(reading, draft, path),
    length: reading.quantity([...path, 'length'], draft.length, length),
    cord: reading.quantity([...path, 'cord'], draft.cord ?? '0 m', cord),
    path,
  });
}

/** Exactly one of `link` and `weighs`; a value of the wrong kind is undefined but stands there. */
function readWeight(
  reading: Reading,
  draft: ChainsDraft,
  path: Path,
): Chains['weight'] | undefined {
  const [hasLink, hasWeight] = [Object.hasOwn(draft, 'link'), Object.hasOwn(draft, 'weighs')];
  const name = path.at(-1);
  if (hasLink && hasWeight) {
    const message = `${name} has both link and weighs; either one says how heavy the chain is`;
    const hint = 'delete one of the two';
    reading.refuse([...path, 'weighs'], { code: 'two-weights', message, hint, key: true });
  }
  if (!hasLink && !hasWeight) {
    const message = `${name} does not say how heavy the chain is`;
    const hint = 'write link: 10 mm (thickness of its wire) or weighs: 2.2 kg/m';
    reading.refuse(path, { code: 'no-weight', message, hint, key: true });
  }
  const kgPerMetre = reading.quantity([...path, 'weighs'], draft.weighs, weighs);
  const thickness = reading.quantity([...path, 'link'], draft.link, link);
  if (kgPerMetre !== undefined) return { kgPerMetre };
  return thickness === undefined ? undefined : { link: thickness };
}
