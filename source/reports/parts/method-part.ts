import type {Check} from '../../check/check.js';
import {factsOfSeries} from '../../check/progress.js';
import {showsHandForce} from '../../procedure/readings.js';
import {documentOfCheck, seriesThatCounts} from '../../results/document-of-check.js';
import type {Document} from '../../results/document-schema.js';
import type {Figures} from '../../results/figures-types.js';
import {isMeasured} from '../../results/figures-types.js';
import type {Issued} from '../../results/issued.js';
import {units} from '../../units.js';
import {plainNumber} from '../../words/wording.js';
import {type Block, type Part, type Section, sentence, type Words} from '../report.js';
import {limitsOfMethod} from '../texts.js';

/** How it was measured and how sure it is, in plain words, for a reader who was not at the bench. */
export const methodPart = (check: Check, issued: Issued | null): Section => ({
	title: 'Appendix: method and uncertainty',
	blocks: [],
	parts: [
		howMeasured(check),
		whatFiguresMean(check),
		howSure(check, issued),
		{title: 'Limits of the method', blocks: [list(limitsOfMethod)]},
	],
});

const list = (items: readonly Words[]): Block => ({kind: 'list', items});

function howMeasured(check: Check): Part {
	const readings = showsHandForce(factsOfSeries(check, seriesThatCounts(check)))
		? 'The gauge shows the force of the hand that just starts the arm: each such reading was negated, and the two limits were exchanged.'
		: 'Each reading is the force that the arm exerts on the gauge.';
	return {
		title: 'How it was measured',
		blocks: [
			sentence(
				'A gauge carries the arm where the stylus would be and reads the force with which the arm pushes sideways. Nudged in small steps toward the spindle and toward the rim, the arm still holds until friction lets it go: the last readings on both sides are the two hold limits. One pair of them is a round.',
			),
			sentence(
				`${readings} Positive, or "out", is toward the rim; negative, or "in", is toward the spindle. For the probe the bias is off and damping is out of action; where that was not so, it stands among what was overridden. The stylus guard stays on to protect the cantilever, and its mass counts in the tracking force.`,
			),
			sentence(
				'Rounds taken with nothing changed in between are a series; figures never mix series, and the verdict is on the last one that was measured. With the gauge turned end for end, one round tells the zero of the gauge from the pull of the arm. The closing round, back at the first radius, counts like any other and shows whether anything moved meanwhile.',
			),
		],
	};
}

function whatFiguresMean({limits}: Check): Part {
	const upTo = (good: number, usable: number) => `good to ${plainNumber(good)} %, usable to ${plainNumber(usable)} %`;
	return {
		title: 'What the figures mean',
		blocks: [
			list([
				`Side pull: the middle of both limits, made by wiring, bearings and level; ${upTo(limits.pullGoodPct, limits.pullUsablePct)}.`,
				`Hold band: the span between the limits, the static friction; ${upTo(limits.bandGoodPct, limits.bandUsablePct)}. Half of it, the breakaway, just moves the arm either way.`,
				"Tilt's share: what the tilt of the deck makes of the pull. It is shown beside the pull and never taken off.",
				'All of them are percent of the playing tracking force. The limits were set in the program; its own defaults are from memory of trade practice, no published limits were found.',
			]),
		],
	};
}

function howSure(check: Check, issued: Issued | null): Part {
	const found = documentOfCheck(check);
	return {
		title: 'How sure it is',
		blocks: [
			sentence(
				'Every ± is for 95 %: of a hundred such intervals about ninety-five hold the true value, as far as what is listed here is all there is. A verdict is given only where the figure and its whole ± lie on one side of a limit; else it is undecided, and what would decide it is said.',
			),
			...(issued?.form === 1 ? [sentence(issuedBefore)] : []),
			...(found.ok && issued && issued.form === undefined ? [budgetTable(found.document, issued.figures)] : []),
			sentence(
				'These parts are added as squares (JCGM 100:2008). With few rounds the interval is widened by the Student factor that belongs to them.',
			),
		],
	};
}

/** Of figures that an earlier version issued: they stay as they are. */
const issuedBefore =
	'These figures were issued by an earlier version of the program: their ± leave out what setting up arm and gauge makes of a pull (0.3 %), and how little few rounds tell of the zero of the gauge.';

/** What went into the ±, as it was stated or found. */
function budgetTable({gauge, trackingForce}: Document, figures: Figures): Block {
	const {probe} = figures;
	const unit = units[gauge.unit].label;
	const inGauge = (value: number | undefined) => `${plainNumber(value ?? 0)} ${unit}`;
	const ofFigure = (pct: number | undefined) => `standard uncertainty ${plainNumber(pct ?? 0)} % of the figure`;
	const isPooled = probe.some((one) => isMeasured(one) && one.repeatability === 'pooled');
	const force = ['tracking force', ofFigure(trackingForce.relativeUncertaintyPct)] as const;
	const zero = {
		turned: 'found by turning the gauge; its ± comes from the same rounds',
		stated: `read free of the arm; standard uncertainty ${inGauge(gauge.zeroUncertainty)}`,
		unchecked: 'not checked; half a percent, or a step, either way is counted',
	}[figures.zero.source];
	return {
		kind: 'facts',
		caption: 'What the ± is made of',
		facts: [
			['reading step of the gauge', inGauge(gauge.step)],
			['nudge', inGauge(gauge.nudge)],
			['zero of the gauge', zero],
			['scale of the gauge', ofFigure(gauge.relativeUncertaintyPct)],
			// With a percent gauge the gain of the stylus scale cancels.
			...(gauge.unit === 'percent' ? [] : [force]),
			[
				'how well rounds repeat',
				isPooled ? 'from the rounds of all radii together' : 'assumed: 0.3 % for a middle, 0.6 % for a band',
			],
			[
				'setting up',
				gauge.setAnew ? 'the gauge was set anew for each round, so the rounds show it' : '0.3 % of the playing force',
			],
		],
	};
}
