import type {Check, Series, Trial} from '../check/check.js';
import {openSeries} from '../check/series.js';
import {chosenTrial, nameOfTrial, trialsOf} from '../check/trials.js';
import {isAbove} from '../measures/compare.js';
import {wantedReadingPct} from '../measures/skating.js';
import {hasBias} from '../procedure/bias-devices.js';
import {onRadiusMm} from '../procedure/bias-on.js';
import type {Facts} from '../procedure/facts.js';
import type {OnPlace} from '../procedure/places.js';
import {biasAdvice} from './bias-advice.js';
import {biasProblem} from './bias-figures.js';
import {curveOf, leftWord} from './curve.js';
import {factsOfTrial, partialDocument} from './document-of-check.js';
import type {Document} from './document-schema.js';
import {type Figures, figuresOf} from './figures.js';
import {type BiasFigures, type BiasRow, isMeasured} from './figures-types.js';
import {grooveLines} from './groove-lines.js';
import {leverLines} from './lever-lines.js';
import {settingsOf} from './settings.js';
import {line, type Shown} from './shown-lines.js';
import {forceWithWay, plainNumber} from './wording.js';

/** An arm that sticks is told first that bias cannot be set finer than half its hold band. */
function frictionFirst({probe}: Figures): Shown[] {
	const wide = probe.filter(isMeasured).filter(({bandVerdict}) => bandVerdict === 'beyond');
	if (wide.length === 0) return [];
	const widestPct = Math.max(...wide.map(({bandPct}) => bandPct));
	return [
		line(
			`First: the hold band of ${widestPct.toFixed(1)} % is beyond limits, and bias can be set no finer than half of it, ±${(widestPct / 2).toFixed(1)} %.`,
			'bad',
		),
	];
}

/** A wanted reading that the gauge cannot show. */
function overTheTop(document: Document, {probe}: Figures): Shown[] {
	const topPct = topOfScalePct(document);
	const drag = document.bias?.effectiveDrag;
	const over = probe
		.filter(isMeasured)
		.filter(
			({radiusMm, bandPct}) =>
				drag !== undefined && isAbove(wantedReadingPct(document.arm, drag, radiusMm) + bandPct / 2, topPct),
		);
	if (over.length === 0) return [];
	return [
		line(
			`The wanted reading and half the hold band together pass the top of the scale (${plainNumber(topPct)} %) at ${over.map(({radiusMm}) => `${plainNumber(radiusMm)} mm`).join(' and ')}: the outer limit may be off scale there.`,
			'warn',
		),
	];
}

/** Top of the gauge's scale in percent of tracking force. */
function topOfScalePct(document: Document): number {
	const {topOfScale, scale} = settingsOf(document);
	return Number((scale.factor * (topOfScale - scale.zero)).toFixed(1));
}

/** Before any bias reading: what skating asks of this arm, beside the arm's own pull. */
export function skatingLines(facts: Facts): Shown[] {
	const document = partialDocument(facts);
	if (!document) return [];
	const figures = figuresOf(document);
	return [
		...frictionFirst(figures),
		...overTheTop(document, figures),
		curveOf({document, probe: figures.probe, rows: []}),
		line(
			'Wanted is the torque that bias must cancel: drag times the sine of the angle between groove tangent and the line stylus to pivot. The groove wall, without bias, gives a little more: drag times the tangent.',
			'dim',
		),
		...(hasBias(facts) ? [] : [line('This arm has no bias device: its own pull is all there is against skating.')]),
	];
}

type Read = {readonly document: Document; readonly figures: Figures; readonly bias: BiasFigures; readonly facts: Facts};

/** What a setting came to; undefined where it has no figures. */
function readOf(check: Check, series: Series, trial: Trial): Read | undefined {
	const facts = factsOfTrial(check, series, trial);
	const document = partialDocument(facts);
	const figures = document && figuresOf(document);
	return document && figures?.bias ? {document, figures, bias: figures.bias, facts} : undefined;
}

function rowsTable({rows, fit}: BiasFigures): Shown {
	const out = (pct: number | null) => (pct === null ? 'off scale' : forceWithWay(pct, '%', 1));
	const body = rows.map(({radiusMm, wantedPct, pullOnPct, biasPct, leftoverPct}) => {
		const target = fit?.targets.find((one) => one.radiusMm === radiusMm);
		return [
			`${plainNumber(radiusMm)} mm`,
			out(wantedPct),
			out(pullOnPct),
			out(biasPct),
			leftoverPct === null ? '-' : leftWord(leftoverPct),
			target ? out(target.targetPct) : '-',
		];
	});
	const head = ['', 'wanted', 'read', 'bias alone', 'left over', 'set gauge to'];
	return {
		kind: 'table',
		head,
		rows: body,
		caption: body
			.map(
				([name = '', ...cells]) =>
					`${name}: ${cells.map((cell, index) => `${head[index + 1] ?? ''} ${cell}`).join(', ')}.`,
			)
			.join(' '),
	};
}

/** Every setting that was read, the best one marked. */
function settingsTried(check: Check, series: Series): Shown[] {
	const trials = trialsOf(check, series);
	if (trials.length < 2) return [];
	const left = trials.map((trial) => readOf(check, series, trial)?.bias.fit?.worstBeforePct);
	const least = Math.min(...left.map((pct) => pct ?? Number.POSITIVE_INFINITY));
	return trials.map((trial, index) => {
		const pct = left[index];
		const said = pct === undefined ? 'no figures' : `at most ${pct.toFixed(1)} % left over the record`;
		return line(
			`Setting ${nameOfTrial(index + 1, trial)}: ${said}${pct === least ? ' (best so far)' : ''}`,
			pct === least ? 'good' : 'plain',
		);
	});
}

/** What the readings with the bias on came to; nothing when there are none at two radii. */
export function biasLines(check: Check, series: Series = openSeries(check)): Shown[] {
	const chosen = chosenTrial(check, series);
	const read = chosen && readOf(check, series, chosen.trial);
	if (!chosen || !read) return [];
	const {document, figures, bias, facts} = read;
	if (bias.rows.every(({pullOnPct}) => pullOnPct === null))
		return [line('No reading with the bias on that has figures.', 'warn')];
	const problem = biasProblem(document, settingsOf(document), figures.probe);
	return [
		line(
			`Bias setting ${nameOfTrial(chosen.number, chosen.trial)}; drag ${bias.effectiveDrag.toFixed(2)} assumed`,
			'strong',
		),
		...frictionFirst(figures),
		rowsTable(bias),
		...(problem && bias.fit
			? biasAdvice({fit: bias.fit, problem, facts, topPct: topOfScalePct(document)})
			: [line('Too few radii, or no bias worth the name: no best setting.', 'warn')]),
		...settingsTried(check, series),
		curveOf({document, probe: figures.probe, rows: bias.rows}),
		...(problem ? leverLines(problem, facts) : []),
		...(problem && bias.fit ? grooveLines(problem, document, bias.fit.factor) : []),
	];
}

/** With the bias on, at one radius: what is wanted there, what was read, and the curve so far. */
export function biasSoFar(facts: Facts, place: OnPlace): Shown[] {
	const document = partialDocument(facts, 1);
	const radiusMm = onRadiusMm(facts, place);
	const figures = document && figuresOf(document);
	if (!document || !figures?.bias || radiusMm === undefined) return [];
	const {bias, probe} = figures;
	const isRead = (document.bias?.readings ?? []).length > 0;
	const row = bias.rows.find((one) => one.radiusMm === radiusMm && one.pullOnPct !== null);
	const wanted = `Wanted here: ${forceWithWay(wantedReadingPct(document.arm, bias.effectiveDrag, radiusMm), '%', 1)} in the middle of both limits.`;
	return [
		line(row ? readingText(row) : wanted, 'strong'),
		curveOf({document, probe, rows: isRead ? bias.rows : [], brief: true}),
	];
}

const readingText = ({wantedPct, pullOnPct, biasPct, leftoverPct}: BiasRow): string =>
	`Read ${forceWithWay(pullOnPct ?? 0, '%', 1)}, wanted ${forceWithWay(wantedPct, '%', 1)}: ${leftWord(leftoverPct ?? 0)}. Bias alone: ${forceWithWay(biasPct ?? 0, '%', 1)}.`;
