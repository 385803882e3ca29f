import {clearancePasses, guardWindowMm, stylusWindowMm} from '../measures/clearance.js';
import {levelPasses, levelTilt, wholeTiltDeg} from '../measures/level.js';
import type {Document} from './document-schema.js';
import type {ClearanceFigures, LevelFigures, RadiusFigures} from './figures-types.js';
import type {Settings} from './settings.js';

/** Tilt in both directions, and whether its share of the pull and the whole tilt are small enough at every radius. */
export const levelOf = (
	{level}: Document,
	{pullLimits}: Settings,
	probe: readonly Pick<RadiusFigures, 'tiltSharePct'>[],
): LevelFigures | null => {
	if (level === undefined) return null;
	const leftRight = levelTilt(level.leftRightDeg);
	const frontBack = levelTilt(level.frontBackDeg);
	const shares = probe.map(({tiltSharePct}) => tiltSharePct ?? 0);
	const passes = levelPasses(shares, wholeTiltDeg(leftRight, frontBack), pullLimits.good);
	return {leftRight, frontBack, passes};
};

/** Both clearance windows, and whether the stylus stands inside its own with the guard clear of the surface. */
export const clearanceOf = ({clearance, trackingForce}: Document): ClearanceFigures | null => {
	if (clearance === undefined) return null;
	const {stylusMm, matRemovedMm = 0, guardDepthMm} = clearance;
	const stylusWindow = stylusWindowMm(matRemovedMm);
	const depthMm = trackingForce.guard === 'none' ? undefined : guardDepthMm;
	return {
		stylusWindowMm: stylusWindow,
		guardWindowMm: depthMm === undefined ? null : guardWindowMm(stylusWindow, depthMm),
		passes: clearancePasses(stylusMm, stylusWindow, depthMm),
	};
};
