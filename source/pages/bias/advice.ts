import limits from '../../../shared/limits.json' with {type: 'json'};
import {type BiasProblem, biasFit} from '../../measures/bias-fit.js';
import {isAbove, isAtMost} from '../../measures/compare.js';
import {biasDeviceOf} from '../../procedure/bias-devices.js';
import type {Facts} from '../../procedure/facts.js';
import type {BiasFitFigures} from '../../results/figures-types.js';
import {formatIn} from '../../units.js';
import {listed} from '../../words/wording.js';
import {line, type Shown} from '../shown-lines.js';

/** A gain smaller than this is not worth a hand on the arm, in percent. */
export const worthwhilePct = 0.1;

/** Whether what is left lies under what friction lets one read: then it is done. */
export const isDone = ({worstBeforePct, frictionFloorPct}: BiasFitFigures): boolean =>
	isAtMost(worstBeforePct, frictionFloorPct);

const isAsGoodAsItGets = ({worstBeforePct, worstAfterPct}: BiasFitFigures): boolean =>
	isAtMost(worstBeforePct - worstAfterPct, worthwhilePct);

/** What the device is to be set to, in the device's own words. */
function setting(factor: number, facts: Facts): string {
	const weight = facts.number('bias-weight');
	const times = `about ${factor.toFixed(factor < 1 ? 2 : 1)} times`;
	switch (biasDeviceOf(facts).setBy) {
		case 'weight':
			return weight === undefined
				? `make it pull ${times} as much by weight or notch`
				: `its weight from ${formatIn(weight, 'g', 1)} to ${formatIn(weight * factor, 'g', 1)} (or as much by its notch)`;
		case 'turning':
			return `turn it ${factor > 1 ? 'up' : 'down'}, to ${times} its present pull`;
		case 'dial':
		case 'nothing':
			return `${times} the present setting`;
	}
}

/** How the best setting moves when the assumed drag is off. */
function otherDrags(problem: BiasProblem): Shown[] {
	const fits = [-1, 1].flatMap((sign) => {
		const drag = problem.drag + sign * limits.effectiveDragBand.value;
		const fit = biasFit({...problem, drag});
		return fit ? [{drag, fit}] : [];
	});
	if (fits.length === 0) return [];
	const each = fits.map(({drag, fit}) => `${fit.factor.toFixed(2)} times with a drag of ${drag.toFixed(2)}`);
	return [line(`The drag is assumed. Best would be ${listed(each)}: nothing finer than that is worth setting.`, 'dim')];
}

type Advice = {
	readonly fit: BiasFitFigures;
	readonly problem: BiasProblem;
	readonly facts: Facts;
	/** What the gauge is to show: first of all, because that is what a hand can set. */
	readonly targets: readonly Shown[];
	/** The setting was chosen: nothing is to be set any more. */
	readonly isKept?: boolean;
};

/** What to do with the device next, or what a setting that was kept leaves. */
export function biasAdvice({fit, problem, facts, targets, isKept = false}: Advice): Shown[] {
	const {factor, worstBeforePct, worstAfterPct, frictionFloorPct, rmsAfterPct} = fit;
	if (isDone(fit))
		return [
			line(
				`At most ${worstBeforePct.toFixed(1)} % is left over the record: under the friction floor of ${frictionFloorPct.toFixed(1)} %. Leave it so.`,
				'good',
			),
			...otherDrags(problem),
		];
	const allowedPct = Math.max(frictionFloorPct, facts.limits.pullGoodPct);
	const shape = isAbove(worstAfterPct, allowedPct)
		? [
				line(
					`No setting of this device can do better than ${worstAfterPct.toFixed(1)} %: its pull has the wrong shape over the record.`,
					'warn',
				),
			]
		: [];
	const left = `left over the record: at most ${worstAfterPct.toFixed(1)} % instead of ${worstBeforePct.toFixed(1)} % (root mean square ${rmsAfterPct.toFixed(1)} %, friction floor ${frictionFloorPct.toFixed(1)} %).`;
	if (isAsGoodAsItGets(fit))
		return [
			line(`At most ${worstBeforePct.toFixed(1)} % is left over the record; no other strength does better.`, 'strong'),
			...shape,
			...otherDrags(problem),
		];
	return [
		...(isKept
			? [line(keptText(fit))]
			: [...targets, line(`${strength(factor, facts)} ${left.charAt(0).toUpperCase()}${left.slice(1)}`)]),
		...shape,
		...otherDrags(problem),
	];
}

/** What a setting leaves that was kept although another would leave less. */
function keptText({factor, worstBeforePct, worstAfterPct, frictionFloorPct}: BiasFitFigures): string {
	const other = isAtMost(factor, 0) ? 'no bias at all' : `about ${factor.toFixed(factor < 1 ? 2 : 1)} times its pull`;
	return `At most ${worstBeforePct.toFixed(1)} % is left over the record (friction floor ${frictionFloorPct.toFixed(1)} %). Not taken: ${other}, which would leave ${worstAfterPct.toFixed(1)} %.`;
}

function strength(factor: number, facts: Facts): string {
	if (isAtMost(factor, 0)) return 'Best without any bias: the arm pulls outward enough by itself.';
	const most = limits.mostBiasFactor.value;
	const far = isAbove(factor, most - 1e-6) ? ` It is far too weak: even ${most} times is not enough.` : '';
	const words = setting(factor, facts);
	return `${words.charAt(0).toUpperCase()}${words.slice(1)}, then probe again.${far}`;
}
