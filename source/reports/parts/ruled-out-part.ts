import type {Check} from '../../check/check.js';
import {factsOfSeries} from '../../check/progress.js';
import {zeroText} from '../../pages/zero-text.js';
import {biasDeviceOf, hasBias} from '../../procedure/bias-devices.js';
import type {Facts} from '../../procedure/facts.js';
import {closingOf} from '../../procedure/hold-limits.js';
import {stepById} from '../../procedure/index.js';
import {placeLabel} from '../../procedure/places.js';
import {takes} from '../../procedure/step.js';
import {tickStates} from '../../procedure/ticks.js';
import {seriesThatCounts} from '../../results/document-of-check.js';
import type {Figures} from '../../results/figures-types.js';
import {formatIn} from '../../units.js';
import {becauseText} from '../../words/says.js';
import {plainNumber, sideForce} from '../../words/wording.js';
import type {Block, Cell, Section} from '../report.js';

/** One cause from outside the arm, and whether it can still be behind the readings. */
type Cause = {readonly name: string; readonly state: keyof typeof states; readonly by: string};

// Kept on one line each; with the shape that says the same.
const states = {
	out: {words: 'ruled\u00A0out', verdict: 'good', atWorst: 'good'},
	open: {words: 'not\u00A0ruled\u00A0out', verdict: 'undecided', atWorst: 'usable'},
	none: 'not\u00A0fitted',
} as const satisfies Record<string, Cell>;

/** Causes outside the arm, as far as the check could rule them out. */
export function ruledOutPart(check: Check, figures: Figures): Section {
	const facts = factsOfSeries(check, seriesThatCounts(check));
	const causes = [
		level(figures),
		bias(facts),
		damping(facts),
		...ticked(facts),
		zero(facts, figures),
		force(facts, figures),
		clearance(facts, figures),
		movedMeanwhile(facts),
	];
	return {title: 'What was ruled out', blocks: [tableOf(causes), ...remedies(check)]};
}

const tableOf = (causes: readonly Cause[]): Block => ({
	kind: 'table',
	caption: 'Causes outside the arm, as the technician confirmed or measured them',
	head: ['cause', 'state', 'by'],
	rows: causes.map(({name, state, by}) => [name, states[state], by]),
});

const cause = (name: string, isOut: boolean, by: string): Cause => ({
	name,
	state: isOut ? 'out' : 'open',
	by,
});

function level({level: found, probe}: Figures): Cause {
	if (!found) return cause('tilt of the deck', false, 'the level was not read');
	const shares = probe.map(
		({place, tiltSharePct, tiltShareUncertaintyPct}) =>
			`${sideForce(tiltSharePct ?? 0, tiltShareUncertaintyPct ?? 0)} at the ${placeLabel(place)} radius`,
	);
	const isPaired = found.leftRight.zeroErrorDeg !== null && found.frontBack.zeroErrorDeg !== null;
	const once = isPaired ? '' : "; read once only, so the level's own error is in it";
	return cause('tilt of the deck', found.passes && isPaired, `its share of the pull: ${shares.join(', ')}${once}`);
}

function bias(facts: Facts): Cause {
	if (!hasBias(facts)) return {name: 'bias device', state: 'none', by: 'the arm has none'};
	const {label, mistake} = biasDeviceOf(facts);
	return facts.yes('bias-off')
		? cause('bias device', true, `confirmed out of action (${label}). ${mistake}`)
		: cause('bias device', false, `${label}: still acting, or not confirmed`);
}

function damping(facts: Facts): Cause {
	if (!facts.is('arm-damping', 'yes')) return {name: 'damping', state: 'none', by: 'the arm has no fluid damper'};
	return facts.yes('damping-off')
		? cause('damping', true, 'confirmed free of the arm')
		: cause('damping', false, 'the damper was not confirmed free of the arm');
}

/** What each line of the look along the arm rules out; a line without a name here stands by its own words. */
const tickedCauses: Readonly<Record<string, string>> = {
	upright: 'sideways lean of a unipivot',
	leads: 'leads that pull or rub',
	lifter: 'lifter touching the arm',
	rest: 'rest or clip in the way',
	screws: 'loose screws',
	air: 'draught',
	static: 'static on mat or hands',
};

/** Leads, lifter, rest, screws, draught, static: one line each, as they were ticked. */
function ticked(facts: Facts): Cause[] {
	const wires = stepById('wires');
	if (!wires || !takes(wires, 'ticks')) return [];
	return tickStates(wires, facts).map(({line: {id, text}, mark}) => {
		const said = mark === 'yes' ? 'confirmed' : mark === 'no' ? 'not so' : 'not answered';
		return cause(tickedCauses[id] ?? text, mark === 'yes', `${text}: ${said}`);
	});
}

const zero = (facts: Facts, {zero: found}: Figures): Cause =>
	cause('zero of the gauge', found.source !== 'unchecked', zeroText(found, facts));

function force(facts: Facts, {carriedMn}: Figures): Cause {
	const playing = facts.number('playing-force');
	const said = playing === undefined ? '' : `, ${((100 * carriedMn) / playing).toFixed(1)} % of the playing force`;
	return cause('wrong tracking force', true, `weighed: the gauge carried ${formatIn(carriedMn, 'mN')}${said}`);
}

function clearance(facts: Facts, {clearance: found}: Figures): Cause {
	const stylusMm = facts.number('clearance');
	if (!found || stylusMm === undefined) return cause('a guard that touches', false, 'the clearance was not measured');
	const [low, high] = found.stylusWindowMm;
	return cause(
		'a guard that touches',
		found.passes,
		`stylus ${plainNumber(stylusMm)} mm above the surface, window ${plainNumber(low)} to ${plainNumber(high)} mm`,
	);
}

function movedMeanwhile(facts: Facts): Cause {
	const closing = closingOf(facts);
	if (!closing) return cause('something that moved during the probe', false, 'no closing round with figures');
	const off = Math.abs(closing.movedPct).toFixed(2);
	return cause(
		'something that moved during the probe',
		!closing.moved && closing.tells,
		`the closing round lay ${off} % from the inner rounds, allowed ${closing.allowedPct.toFixed(2)} %${closing.tells ? '' : ': the rounds scatter too much to tell'}`,
	);
}

/** What was tried between series; the figures before and after stand in a part of their own. */
function remedies(check: Check): Block[] {
	const tried = check.series.flatMap(({closed}, index) =>
		closed ? [[`Series ${index + 1} closed, then probed again: `, {typed: becauseText(closed.because)}, '.']] : [],
	);
	return tried.length === 0
		? [{kind: 'line', words: 'No remedy was tried between series in this check.', tone: 'plain'}]
		: [{kind: 'list', items: tried}];
}
