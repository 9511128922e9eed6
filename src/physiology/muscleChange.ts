import type { Coefficients } from '../tables/adaptation.ts';
import { regions } from '../tables/quadriceps.ts';

/** What training has changed in one muscle, as shares of its first state (0.1 = ten per cent more). */
export interface MuscleChange {
  /** Added area, one entry a region. */
  readonly growth: readonly number[];
  /** Fibre length added by work at long length. */
  readonly lengthened: number;
  /** Fibre length added by lowering. */
  readonly drawn: number;
  /** Fibre length taken by work at short length. */
  readonly shortened: number;
}

/** Before any training; compared by identity to save work. */
export const unchangedMuscle: MuscleChange = {
  growth: regions.names.map(() => 0),
  lengthened: 0,
  drawn: 0,
  shortened: 0,
};

/** Fibre length added, as ultrasound would see it. */
export function fibreChange({ lengthened, drawn, shortened }: MuscleChange): number {
  return lengthened + drawn - shortened;
}

/**
 * The part of it that acts on torque and size: sarcomeres in series. More of what work at length
 * added than of what lowering did.
 */
export function actingFibre(change: MuscleChange, c: Coefficients): number {
  const { lengthened, drawn, shortened } = change;
  return c.seriesEffect * (lengthened - shortened) + c.loweringEffect * drawn;
}

/** Mean growth over the regions, which share the area evenly. */
export function meanGrowth({ growth }: Pick<MuscleChange, 'growth'>): number {
  return growth.reduce((sum, grown) => sum + grown, 0) / growth.length;
}
