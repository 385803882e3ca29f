import {slant} from './model-geometry.js';
import type {Pool} from './model-pool.js';
import {normalQuantile, studentQuantile} from './model-student-t.js';
import type {ModelDocument} from './model-types.js';

export interface Expanded {
	expanded: number;
	/** Infinite where the scatter was assumed or plays no part. */
	freedom: number;
}

/** A radius with figures, as far as the uncertainties need it. */
export interface Counted {
	radiusMm: number;
	used: number;
	turned: number;
}

export interface Setting {
	document: ModelDocument;
	f: number;
	pool: Pool;
	/** The radius with turned rounds, where it has figures. */
	turnedAt: Counted | null;
}

/** What a what-if changes: rounds more, and the hidden part of the step left out. */
export interface WhatIf {
	more: number;
	fineStep: boolean;
}

export const asItIs: WhatIf = {more: 0, fineStep: false};

const expand = (scatter: number, common: number, freedom: number, assumed: boolean): Expanded => {
	const whole = scatter + common;
	const effective = assumed || scatter < 1e-18 ? Number.POSITIVE_INFINITY : freedom * (whole / scatter) ** 2;
	const kept = effective > 1e6 ? Number.POSITIVE_INFINITY : effective;
	const k = Number.isFinite(kept) ? studentQuantile(kept) : normalQuantile;
	return {expanded: k * Math.sqrt(whole), freedom: kept};
};

const gain = ({document}: Setting, figure: number): number => {
	const {unit, relativeUncertaintyPct: gauge = 0} = document.gauge;
	const {relativeUncertaintyPct: force = 0} = document.trackingForce;
	const square = gauge ** 2 + (unit === 'percent' ? 0 : force ** 2);
	return (figure / 100) ** 2 * square;
};

/** Standard uncertainty of a zero that was stated or not checked, squared. */
const zeroSquare = ({document, f}: Setting): number => {
	const {zero, zeroUncertainty = 0, step} = document.gauge;
	return zero === undefined ? Math.max(f * step, 0.5) ** 2 / 3 : (f * zeroUncertainty) ** 2;
};

const turnedScatter = (square: number, used: number, turned: number): number => (square * (1 / used + 1 / turned)) / 4;

export const pullUncertainty = (setting: Setting, at: Counted, pull: number, whatIf = asItIs): Expanded => {
	const {pool, turnedAt} = setting;
	const square = pool.centre.square;
	const used = at.used + whatIf.more;
	const common = (whatIf.fineStep ? 0 : pool.hiddenStepCentre) + pool.settingUp;
	const parts = (): [number, number] => {
		if (turnedAt === null) {
			return [square / used, common + zeroSquare(setting)];
		}
		if (turnedAt.radiusMm === at.radiusMm) {
			return [turnedScatter(square, used, at.turned), common / 2];
		}
		return [square / used + turnedScatter(square, turnedAt.used, turnedAt.turned), (common * 3) / 2];
	};
	const [scatter, shared] = parts();
	return expand(scatter, shared + gain(setting, pull), pool.centre.freedom + whatIf.more, pool.centre.assumed);
};

export const bandUncertainty = (setting: Setting, at: Counted, band: number, whatIf = asItIs): Expanded => {
	const {pool} = setting;
	const common = (whatIf.fineStep ? 0 : pool.hiddenStepWidth) + gain(setting, band);
	const scatter = pool.width.square / (at.used + at.turned + whatIf.more);
	return expand(scatter, common, pool.width.freedom + whatIf.more, pool.width.assumed);
};

/** Expanded uncertainty of the gauge's zero, in percent of the playing force; null where it was not checked. */
export const zeroUncertainty = (setting: Setting): number | null => {
	const {pool, turnedAt, document} = setting;
	if (turnedAt !== null) {
		const scatter = turnedScatter(pool.centre.square, turnedAt.used, turnedAt.turned);
		const common = (pool.hiddenStepCentre + pool.settingUp) / 2;
		return expand(scatter, common, pool.centre.freedom, pool.centre.assumed).expanded;
	}
	return document.gauge.zero === undefined ? null : normalQuantile * Math.sqrt(zeroSquare(setting));
};

export const pullDifferenceUncertainty = (setting: Setting, outer: Counted, inner: Counted, pulls: number): number => {
	const {pool, document} = setting;
	const scatter = pool.centre.square * (1 / outer.used + 1 / inner.used);
	const leaning = slant(document, outer.radiusMm, inner.radiusMm) ** 2;
	const common = 2 * pool.hiddenStepCentre + 2 * pool.settingUp + leaning + gain(setting, pulls);
	return expand(scatter, common, pool.centre.freedom, pool.centre.assumed).expanded;
};

export const bandDifferenceUncertainty = (setting: Setting, outer: Counted, inner: Counted, bands: number): number => {
	const {pool} = setting;
	const scatter = pool.width.square * (1 / (outer.used + outer.turned) + 1 / (inner.used + inner.turned));
	const common = 2 * pool.hiddenStepWidth + gain(setting, bands);
	return expand(scatter, common, pool.width.freedom, pool.width.assumed).expanded;
};
