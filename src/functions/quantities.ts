import type { Exponents } from '../notebook/formula/dimensions.ts';

/** Dimensions of what functions take and give: kilogram, metre, second, angle. */
export const mass: Exponents = [1, 0, 0, 0];
export const length: Exponents = [0, 1, 0, 0];
export const time: Exponents = [0, 0, 1, 0];
export const angle: Exponents = [0, 0, 0, 1];
export const torque: Exponents = [1, 2, -2, 0];
