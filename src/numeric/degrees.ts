/** Degrees as radians: π/180 of them. */
export const toRadians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Radians as degrees: 180/π of them. */
export const toDegrees = (radians: number): number => (radians * 180) / Math.PI;
