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
	return best.length === 0 ? [] : [line(words.bias.advice.otherDrags({best}), 'aside')];
}

type Asked = {
	readonly fit: BiasFitFigures;
	readonly problem: BiasProblem;
	readonly facts: Facts;
	/** What the gauge is to show. */
	readonly targets: Targets;
	/** The setting was chosen: nothing is to be set any more. */
	readonly isKept?: boolean;
};

/** What is to be done now, and what bears it out. */
type Targets = {readonly now: readonly Shown[]; readonly behind: readonly Shown[]};

/** The same, and before it the caution for hands that go to the device. */
type BiasAdvice = Targets & {readonly caution: readonly Shown[]};

/** What to do with the device next, or what a setting that was kept leaves. */
export function biasAdvice({fit, problem, facts, targets, isKept = false}: Asked): BiasAdvice {
	const said = words.bias.advice;
	const drags = otherDrags(problem);
	const caution: readonly Shown[] = [];
	if (isDone(fit)) return {caution, now: [line(said.leaveItSo(fit), 'good')], behind: drags};
	const allowedPct = Math.max(fit.frictionFloorPct, facts.limits.pullGoodPct);
	const shape = isAbove(fit.worstAfterPct, allowedPct) ? [line(said.wrongShape(fit), 'warn')] : [];
	if (isAsGoodAsItGets(fit)) return {caution, now: [line(said.noBetterStrength, 'strong'), ...shape], behind: drags};
	const isWithoutBias = isAtMost(fit.factor, 0);
	if (isKept) return {caution, now: [line(said.notTaken({fit, isWithoutBias})), ...shape], behind: drags};
	return {
		caution: [line(said.lockFirst, 'warn')],
		now: [
			...(isWithoutBias ? [line(said.bestWithoutBias, 'strong')] : bestSetting(fit, facts)),
			...targets.now,
			...shape,
		],
		behind: [line(said.leftAfter(fit)), ...targets.behind, ...drags],
	};
}

function bestSetting(fit: BiasFitFigures, facts: Facts): Shown[] {
	const most = limits.mostBiasFactor.value;
	const {setBy} = biasDeviceOf(facts);
	return [
		line(words.bias.advice.bestSetting({fit, setBy, weightG: facts.number('bias-weight')}), 'strong'),
		...(isAbove(fit.factor, most - 1e-6) ? [line(words.bias.advice.tooWeak({times: most}), 'warn')] : []),
	];
}

/** What stands beside the offer to set the bias, among the other ways, where something is to be cured first. */
export const biasLater = (findings: readonly {readonly code: FindingCode}[], facts: Facts): Shown[] =>
	hasBias(facts) && namesCure(findings) ? [line(words.bias.advice.cureFirst, 'warn')] : [];
