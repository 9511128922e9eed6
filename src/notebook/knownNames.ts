import { actions } from '../tables/actions.ts';
import { lifts } from '../tables/lifts.ts';

/** The lifts of the catalogue. */
export const liftNames: readonly string[] = lifts.map(({ name }) => name);
/** The joint actions that can be tested, aimed at and held. */
export const actionNames: readonly string[] = Object.keys(actions);
