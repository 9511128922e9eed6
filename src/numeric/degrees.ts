/** Degrees as radians: π/180 of them. */
export const toRadians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Radians as degrees: 180/π of them. */
export const toDegrees = (radians: number): number => (radians * 180) / Math.PI;

/** A hundredth of a degree: angles nearer than this are one angle written twice. */
const sameAngle = 1.8e-4;

/** Whether two angles (radians) are one angle: within a hundredth of a degree. */
export const isSameAngle = (a: number, b: number): boolean => Math.abs(a - b) < sameAngle;
