import type {Check} from '../../check/check.js';
import {factsOfSeries} from '../../check/progress.js';
import {outcomeLines} from '../../pages/before-and-after.js';
import {zeroText} from '../../pages/on-gauge.js';
import {inWords} from '../../pages/shown-lines.js';
import {biasDeviceId, hasBias} from '../../procedure/bias-devices.js';
import {stylusHeightMm} from '../../procedure/clearance.js';
import type {Facts} from '../../procedure/facts.js';
import {closingOf} from '../../procedure/hold-limits.js';
import {stepById} from '../../procedure/index.js';
import {takes} from '../../procedure/step.js';
import {tickStates} from '../../procedure/ticks.js';
import {seriesThatCounts} from '../../results/document-of-check.js';
import type {Figures} from '../../results/figures-types.js';
import {isNoCause} from '../../results/foretold.js';
import {outcomeAfter} from '../../results/tried.js';
import {words} from '../../words/index.js';
import {reportWords} from '../../words/reports.js';
import {becauseText} from '../../words/says.js';
import {optionLabel, placeLabel, tickText} from '../../words/step-text.js';
import {around, type ReportBlock, type Section, sentenceBlock, type TableCell, tableBlock} from '../report.js';

const {captions, ruledOut, sections} = reportWords;
const {causes} = ruledOut;

/** One cause from outside the arm, and whether it can still be behind the readings. */
type Cause = {readonly name: string; readonly state: keyof typeof states; readonly by: string};

// With the shape that says the same.
const states = {
	out: {phrase: ruledOut.out, verdict: 'good', atWorst: 'good'},
	open: {phrase: ruledOut.open, verdict: 'undecided', atWorst: 'usable'},
	none: ruledOut.notFitted,
} as const satisfies Record<string, TableCell>;

/** Causes outside the arm, as far as the check could rule them out. */
export function ruledOutPart(check: Check, figures: Figures): Section {
	const facts = factsOfSeries(check, seriesThatCounts(check));
	const found = [
		levelCause(figures),
		biasCause(facts),
		dampingCause(facts),
		...ticked(facts),
		cause(causes.zero, figures.zero.source !== 'unchecked', zeroText(figures.zero, facts)),
		forceCause(facts, figures),
		clearanceCause(facts, figures),
		movedMeanwhile(facts),
		...suspectsOut(check),
	];
	const rows = found.map(({name, state, by}) => [name, states[state], by]);
	const table = tableBlock(captions.ruledOut, ['cause', 'state', 'by'], rows);
	return {title: sections.ruledOut, blocks: [table, remediesTried(check)]};
}

const cause = (name: string, isOut: boolean, by: string): Cause => ({
	name,
	state: isOut ? 'out' : 'open',
	by,
});

function levelCause({level: found, probe}: Figures): Cause {
	if (!found) return cause(causes.tilt, false, ruledOut.levelNotRead);
	const shares = probe.map(({place, tiltSharePct, tiltShareUncertaintyPct}) => ({
		place: placeLabel(place),
		pct: tiltSharePct ?? 0,
		uncertaintyPct: tiltShareUncertaintyPct ?? 0,
	}));
	const isPaired = found.leftRight.zeroErrorDeg !== null && found.frontBack.zeroErrorDeg !== null;
	return cause(causes.tilt, found.passes && isPaired, ruledOut.levelShares({shares, isPaired}));
}

function biasCause(facts: Facts): Cause {
	if (!hasBias(facts)) return {name: causes.bias, state: 'none', by: ruledOut.noBias};
	const id = biasDeviceId(facts);
	const device = optionLabel('arm-bias-device', id);
	const {mistake} = words.biasDevices[id];
	const isOff = facts.yes('bias-off');
	return cause(causes.bias, isOff, isOff ? ruledOut.biasOff({device, mistake}) : ruledOut.biasOn({device}));
}

function dampingCause(facts: Facts): Cause {
	if (!facts.is('arm-damping', 'yes')) return {name: causes.damping, state: 'none', by: ruledOut.noDamper};
	const isOff = facts.yes('damping-off');
	return cause(causes.damping, isOff, isOff ? ruledOut.damperOff : ruledOut.damperOn);
}

/** Leads, lifter, rest, screws, draught, static: one line each, as they were ticked. */
function ticked(facts: Facts): Cause[] {
	const wires = stepById('wires');
	if (!wires || !takes(wires, 'ticks')) return [];
	return tickStates(wires, facts).map(({line: id, mark}) => {
		const line = tickText('wires', id);
		const said = {yes: ruledOut.lineYes, no: ruledOut.lineNo, open: ruledOut.lineOpen}[mark ?? 'open'];
		return cause(ruledOut.lines[id] ?? line, mark === 'yes', said({line}));
	});
}

const forceCause = (facts: Facts, {carriedMn}: Figures): Cause =>
	cause(causes.force, true, ruledOut.weighed({carriedMn, playingMn: facts.number('playing-force')}));

function clearanceCause(facts: Facts, {clearance: found}: Figures): Cause {
	const stylusMm = stylusHeightMm(facts);
	if (!found || stylusMm === undefined) return cause(causes.clearance, false, ruledOut.clearanceNotMeasured);
	const [lowMm, highMm] = found.stylusWindowMm;
	return cause(causes.clearance, found.passes, ruledOut.clearance({stylusMm, lowMm, highMm}));
}

function movedMeanwhile(facts: Facts): Cause {
	const closing = closingOf(facts);
	if (!closing) return cause(causes.moved, false, ruledOut.noClosing);
	return cause(causes.moved, !closing.moved && closing.tells, ruledOut.closing(closing));
}

/** Suspects that were looked at and changed nothing. */
const suspectsOut = (check: Check): Cause[] =>
	check.series.flatMap((series) => {
		const outcome = outcomeAfter(check, series);
		return outcome && isNoCause(outcome)
			? [cause(words.remedies[outcome.remedy].name, true, words.actions.outcome(outcome))]
			: [];
	});

/** What was tried between series and what it did; the figures before and after stand in a part of their own. */
function remediesTried(check: Check): ReportBlock {
	const items = check.series.flatMap((series, index) => {
		const {closed} = series;
		if (!closed) return [];
		const did = outcomeLines(check, series).map(inWords).join(' ');
		return [around(becauseText(closed.because), (because) => ruledOut.tried({number: index + 1, because, did}))];
	});
	return items.length === 0 ? sentenceBlock(ruledOut.nothingTried) : {kind: 'list', items};
}
