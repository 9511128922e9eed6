import { z } from 'zod';
import { count, group, quantity } from './field.ts';

/** Shapes of what is hung or strapped on a bar, before units are read. */

/** A pair of chains. */
export const chains = z
  .strictObject(
    {
      link: quantity('length', 'Thickness of the link’s wire', '10 mm').optional(),
      weighs: quantity(
        'mass per length',
        'Weight of one chain a metre, instead of link',
        '2.2 kg/m',
      ).optional(),
      length: quantity('length', 'Length of each chain', '1.8 m'),
      cord: quantity(
        'length',
        'Light cord between bar and chain (default 0 m)',
        '20 cm',
      ).optional(),
    },
    group('a group such as { link: 10 mm, length: 1.8 m }'),
  )
  .describe('Two equal chains, one at each end of the bar, hanging to the floor');

const rubber = z
  .strictObject(
    {
      width: quantity('length', 'Width of the rubber', '22 mm'),
      thickness: quantity('length', 'Thickness of the rubber', '4.5 mm'),
      unstretched: quantity('length', 'Length of the loop as it lies', '1 m'),
      strands: count('Strands side by side, 2 in a loop', 8, 'a band has at least 1 strand', 2),
    },
    group('a group such as { width: 22 mm, thickness: 4.5 mm, unstretched: 1 m, strands: 2 }'),
  )
  .describe('One band as it lies, for a rough estimate where nothing was measured');

/** Bands, all of them together. */
export const bands = z
  .strictObject(
    {
      tension: z
        .record(
          z.string(),
          quantity('force', 'Pull of all bands together at this length', '100 N'),
          group('a group such as { 0.9 m: 100 N, 1.4 m: 260 N }'),
        )
        .describe('Length of the band → pull of all bands together')
        .meta({ examples: [{ '0.9 m': '100 N', '1.4 m': '260 N' }] })
        .optional(),
      rubber: rubber.optional(),
      count: count('Bands of this rubber in use', 8, 'there is at least 1 band', 2).optional(),
      anchor: quantity(
        'length',
        'Height of the fixed end above the floor (default 0 m); above the bar the bands help',
        '0 m',
      ).optional(),
    },
    group('a group such as { tension: { 0.9 m: 100 N, 1.4 m: 260 N }, anchor: 0 m }'),
  )
  .describe('Bands between the bar and a fixed place straight above or below it');

/** Chains of the right shape, before units are read. */
export type ChainsFile = z.infer<typeof chains>;
/** Bands of the right shape, before units are read. */
export type BandsFile = z.infer<typeof bands>;
/** Rubber of the right shape, before units are read. */
export type RubberFile = z.infer<typeof rubber>;
