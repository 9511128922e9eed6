import { regions } from '../tables/quadriceps.ts';

/** What training has changed in one muscle, as shares of its first state (0.1 = ten per cent more). */
export interface MuscleChange {
  /** Added area, one entry a region. */
  readonly growth: readonly number[];
  /** Fibre length added (sarcomeres in series) by work at long length and by lowering. */
  readonly lengthened: number;
  /** Fibre length taken by work at short length. */
  readonly shortened: number;
}

/** Before any training; compared by identity to save work. */
export const unchangedMuscle: MuscleChange = {
  growth: regions.names.map(() => 0),
  lengthened: 0,
  shortened: 0,
};

/** Mean growth over the regions, which share the area evenly. */
export function meanGrowth({ growth }: MuscleChange): number {
  return growth.reduce((sum, grown) => sum + grown, 0) / growth.length;
}
