/** Radians in degrees. */
export const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** Degrees in radians. */
export const radians = (angleDeg: number): number => (angleDeg * Math.PI) / 180;
