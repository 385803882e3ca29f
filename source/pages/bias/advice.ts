import limits from '../../../shared/limits.json' with {type: 'json'};
import {type BiasProblem, biasFit} from '../../measures/bias-fit.js';
import {isAbove, isAtMost} from '../../measures/compare.js';
import {biasDeviceOf, hasBias} from '../../procedure/bias-devices.js';
import type {Facts} from '../../procedure/facts.js';
import {type FindingCode, namesCure} from '../../results/diagnose.js';
import type {BiasFitFigures} from '../../results/figures-types.js';
import {words} from '../../words/index.js';
import {line, type Shown} from '../shown-lines.js';

/** A gain smaller than this is not worth a hand on the arm, in percent. */
export const worthwhilePct = 0.1;

/** Whether what is left lies under what friction lets one read: then it is done. */
export const isDone = ({worstBeforePct, frictionFloorPct}: BiasFitFigures): boolean =>
	isAtMost(worstBeforePct, frictionFloorPct);

const isAsGoodAsItGets = ({worstBeforePct, worstAfterPct}: BiasFitFigures): boolean =>
	isAtMost(worstBeforePct - worstAfterPct, worthwhilePct);

/** How the best setting moves when the assumed drag is off. */
function otherDrags(problem: BiasProblem): Shown[] {
	const best = [-1, 1].flatMap((sign) => {
		const drag = problem.drag + sign * limits.effectiveDragBand.value;
		const fit = biasFit({...problem, drag});
		return fit ? [{drag, factor: fit.factor}] : [];
	});
	return best.length === 0 ? [] : [line(words.bias.advice.otherDrags({best}), 'dim')];
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
	if (isDone(fit)) return [line(words.bias.advice.leaveItSo(fit), 'good'), ...otherDrags(problem)];
	const allowedPct = Math.max(fit.frictionFloorPct, facts.limits.pullGoodPct);
	const isWithoutBias = isAtMost(fit.factor, 0);
	const toBeSet = isKept
		? [line(words.bias.advice.notTaken({fit, isWithoutBias}))]
		: [...targets, line(isWithoutBias ? words.bias.advice.bestWithoutBias(fit) : bestSetting(fit, facts))];
	return [
		...(isAsGoodAsItGets(fit) ? [line(words.bias.advice.noBetterStrength(fit), 'strong')] : toBeSet),
		...(isAbove(fit.worstAfterPct, allowedPct) ? [line(words.bias.advice.wrongShape(fit), 'warn')] : []),
		...otherDrags(problem),
	];
}

function bestSetting(fit: BiasFitFigures, facts: Facts): string {
	const most = limits.mostBiasFactor.value;
	return words.bias.advice.bestSetting({
		fit,
		setBy: biasDeviceOf(facts).setBy,
		weightG: facts.number('bias-weight'),
		tooWeakAt: isAbove(fit.factor, most - 1e-6) ? most : undefined,
	});
}

/** What stands beside the offer to set the bias, among the other ways, where something is to be cured first. */
export const biasLater = (findings: readonly {readonly code: FindingCode}[], facts: Facts): Shown[] =>
	hasBias(facts) && namesCure(findings) ? [line(words.bias.advice.cureFirst, 'warn')] : [];
