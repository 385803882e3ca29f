import {degrees} from './angles.js';

/** How far a side pull leans the stylus over, in µm. One µm/mN is 10⁻⁶ cm/dyn. */
export const leanMicrometres = (sidePullPct: number, playingMn: number, complianceUmPerMn: number): number =>
	(Math.abs(sidePullPct) / 100) * playingMn * complianceUmPerMn;

/** The lean as an angle at the cantilever's hinge, in degrees. */
export const leanDegrees = (leanUm: number, cantileverMm: number): number =>
	degrees(Math.atan(leanUm / (1000 * cantileverMm)));
