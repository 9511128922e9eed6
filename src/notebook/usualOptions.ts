import type { z } from 'zod';

/** Branches of unions that a group is taken for where it has the first name of no branch. */
export const usualOptions = new WeakSet<z.core.$ZodType>();
