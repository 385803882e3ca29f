import type {WouldDecide, Zone} from '../measures/verdict.js';
import type {MeasuredRadius} from '../results/figures-types.js';

// At most two digits of an uncertainty, and as many decimals of its value (JCGM 100:2008 7.2.6).
const decimalsFor = (uncertaintyPct: number): number => {
	if (uncertaintyPct >= 0.1) return 1;
	return uncertaintyPct >= 0.01 ? 2 : 3;
};

/** A number with no more decimals than it needs, three at most: 4, 1.5, 0.25. */
export const plainNumber = (value: number): string => String(Number(value.toFixed(3)));

/** A number with its sign, as a gauge shows it; one that prints as zero has none. */
export const withSign = (value: number, decimals?: number): string => {
	const size = decimals === undefined ? String(Math.abs(value)) : Math.abs(value).toFixed(decimals);
	return Number(size) === 0 ? size : `${value < 0 ? '-' : '+'}${size}`;
};

/** As many decimals as a gauge's smallest step has. */
export const stepDecimals = (step: number): number => String(step).split('.')[1]?.length ?? 0;

/** A reading of a gauge with its sign and as many decimals as its smallest step has. */
export const readingText = (reading: number, step: number): string => withSign(reading, stepDecimals(step));

/** Which way the arm pushes: toward the rim, or toward the spindle. */
export const wayOf = (forcePct: number): 'out' | 'in' => (forcePct < 0 ? 'in' : 'out');

/** A size with its way, '6.8 % out'; one that prints as zero has none. */
export const forceWithWay = (force: number, unit: string, decimals: number): string => {
	const size = Math.abs(force).toFixed(decimals);
	return Number(size) === 0 ? `${size} ${unit}` : `${size} ${unit} ${wayOf(force)}`;
};

/** A side force in words, such as '6.8 % out ± 0.5 %'. */
export const sideForce = (forcePct: number, uncertaintyPct: number): string => {
	const decimals = decimalsFor(uncertaintyPct);
	return `${forceWithWay(forcePct, '%', decimals)} ± ${uncertaintyPct.toFixed(decimals)} %`;
};

/** A span in words, such as '6.2 % ± 0.7 %'. */
export const span = (widthPct: number, uncertaintyPct: number): string => {
	const decimals = decimalsFor(uncertaintyPct);
	return `${widthPct.toFixed(decimals)} % ± ${uncertaintyPct.toFixed(decimals)} %`;
};

/** A size that follows from others, '18 ± 1': whole where its uncertainty is one or more. */
export const withUncertainty = (value: number, uncertainty: number): string => {
	const decimals = uncertainty >= 1 ? 0 : decimalsFor(uncertainty);
	return `${value.toFixed(decimals)} ± ${uncertainty.toFixed(decimals)}`;
};

export const pullAt = (figures: MeasuredRadius): string =>
	`${sideForce(figures.pullPct, figures.pullUncertaintyPct)} at ${plainNumber(figures.radiusMm)} mm`;

export const bandAt = (figures: MeasuredRadius): string =>
	`${span(figures.bandPct, figures.bandUncertaintyPct)} at ${plainNumber(figures.radiusMm)} mm`;

/** 'a', 'a and b', 'a, b and c'. */
export const listed = (parts: readonly string[]): string =>
	parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;

/** What is sure of an undecided figure, first. */
export const sureFirst = (atWorst: Zone): string =>
	atWorst === 'beyond' ? 'beyond at worst, usable not proven' : 'usable at worst, good not proven';

/** What would decide an undecided figure. */
export const wouldDecideIt = (wouldDecide: WouldDecide, atWorst: Zone): string => {
	if ('rounds' in wouldDecide) return `${wouldDecide.rounds} rounds in all at that radius would probably decide it`;
	if ('finerStep' in wouldDecide) return 'a finer reading step and nudge would probably decide it';
	return `it stands on the limit and more rounds will not help, so take it as ${atWorst}`;
};

/** The word for a verdict, the same everywhere. */
export const verdictWord = {
	good: 'GOOD',
	usable: 'USABLE',
	beyond: 'BEYOND LIMITS',
	undecided: 'UNDECIDED',
	'off-scale': 'OFF SCALE',
} as const;
