import limits from '../../shared/limits.json' with {type: 'json'};
import {mnPerGram} from '../measures/tracking-force.js';
import {type ClearanceState, clearanceState} from '../procedure/clearance.js';
import type {Facts} from '../procedure/facts.js';
import type {IdOf} from '../procedure/step-ids.js';
import {carriedMn, guardHandling} from '../procedure/weighing.js';
import {words} from '../words/index.js';
import {line, type Shown} from './shown-lines.js';

const said = words.pages.consequences;

/** A force in both units. */
export const bothForces =
	(step: IdOf<'number'>) =>
	(facts: Facts): readonly Shown[] => {
		const forceMn = facts.number(step);
		return forceMn === undefined ? [] : [line(said.bothForces({forceMn}))];
	};

/** What the gauge will carry by a weighing. */
export function carriedLines(facts: Facts): readonly Shown[] {
	const carried = carriedMn(facts);
	const playingMn = facts.number('playing-force');
	if (carried === undefined || playingMn === undefined) return [];
	const handling = guardHandling(facts);
	const guardMn = (facts.number('guard-mass') ?? 0) * mnPerGram;
	return [
		line(said.carried({carriedMn: carried, playingMn})),
		...(handling === 'left-out' ? [line(said.guardUnseen({guardMn}))] : []),
		...(handling === 'included' && guardMn > 0 ? [line(said.guardAlone({guardMn}), 'aside')] : []),
	];
}

/** How high stylus and guard stand, in their windows. */
export function clearanceShown(facts: Facts): readonly Shown[] {
	const {stylusMm, stylusWindow, guardWindow, guardMm} = clearanceState(facts);
	const depthMm = facts.number('guard-depth');
	const toldOf = ([lowMm, highMm]: ClearanceState['stylusWindow'], nowMm: number | undefined) => ({
		lowMm,
		highMm,
		nowMm,
	});
	return [
		{
			kind: 'clearance',
			stylusMm,
			stylusWindowMm: stylusWindow,
			guard: guardWindow && depthMm !== undefined ? {depthMm, windowMm: guardWindow} : undefined,
			isMatOn: !facts.is('mat', 'off'),
			caption: [
				said.stylus(toldOf(stylusWindow, stylusMm)),
				...(guardWindow ? [said.guard(toldOf(guardWindow, guardMm))] : []),
			].join(' '),
		},
		...(guardMm === undefined ? [] : [line(said.guardClear({gapMm: limits.guardGapMm.value}), 'aside')]),
	];
}
