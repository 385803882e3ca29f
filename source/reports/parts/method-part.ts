import type {Check} from '../../check/check.js';
import {factsOfSeries} from '../../check/progress.js';
import {documentOfCheck, seriesThatCounts} from '../../findings/document-of-check.js';
import type {Document} from '../../findings/document-schema.js';
import type {Figures} from '../../findings/figures-types.js';
import {isMeasured} from '../../findings/figures-types.js';
import {plainNumber} from '../../findings/wording.js';
import {showsHandForce} from '../../procedure/readings.js';
import {units} from '../../units.js';
import {type Block, type Part, type Section, sentence, type Words} from '../report.js';
import {limitsOfMethod} from '../texts.js';

/** How it was measured and how sure it is, in plain words, for a reader who was not at the bench. */
export const methodPart = (check: Check, figures: Figures | undefined): Section => ({
	title: 'Appendix: method and uncertainty',
	blocks: [],
	parts: [
		howMeasured(check),
		whatFiguresMean(check),
		howSure(check, figures),
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
				'A gauge carries the arm where the stylus would be and reads the force with which the arm pushes sideways. Nudged in small steps toward the spindle and toward the rim, the arm stays put until friction holds it no longer: the last readings on both sides are the two hold limits. One pair of them is a round.',
			),
			sentence(
				`${readings} Positive, or "out", is toward the rim; negative, or "in", is toward the spindle. For the probe the bias is off and damping is out of action; where that was not so, it stands among what was overridden. The stylus guard stays on to protect the cantilever, and its mass counts in the tracking force.`,
			),
			sentence(
				'Rounds taken with nothing changed in between are a series; figures never mix series, and the verdict is on the last one that was measured. The closing round only shows whether anything moved meanwhile; it enters no figure.',
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
				'All of them are percent of the playing tracking force. The limits were set in the program; its own defaults come from trade practice, no published limits were found.',
			]),
		],
	};
}

function howSure(check: Check, figures: Figures | undefined): Part {
	const found = documentOfCheck(check);
	return {
		title: 'How sure it is',
		blocks: [
			sentence(
				'Every ± is for 95 %: of a hundred such intervals about ninety-five hold the true value, as far as what is listed here is all there is. A verdict is given only where the figure and its whole ± lie on one side of a limit; else it is undecided, and what would decide it is said.',
			),
			...(found.ok && figures ? [budgetTable(found.document, figures)] : []),
			sentence(
				'These parts are added as squares (JCGM 100:2008). With few rounds the interval is widened by the Student factor that belongs to them.',
			),
		],
	};
}

/** What went into the ±, as it was stated or found. */
function budgetTable({gauge, trackingForce}: Document, {probe}: Figures): Block {
	const unit = units[gauge.unit].label;
	const inGauge = (value: number | undefined) => `${plainNumber(value ?? 0)} ${unit}`;
	const ofFigure = (pct: number | undefined) => `standard uncertainty ${plainNumber(pct ?? 0)} % of the figure`;
	const isPooled = probe.some((one) => isMeasured(one) && one.repeatability === 'pooled');
	const force = ['tracking force', ofFigure(trackingForce.relativeUncertaintyPct)] as const;
	const zero = gauge.zeroUncertainty
		? `taken off; standard uncertainty ${inGauge(gauge.zeroUncertainty)}`
		: 'not checked, not covered';
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
			['how well rounds repeat', isPooled ? 'from the rounds of all radii together' : 'unknown: one round a radius'],
		],
	};
}
