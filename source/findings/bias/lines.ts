import type {Check, Series} from '../../check/check.js';
import {openSeries} from '../../check/series.js';
import {chosenTrial, nameOfTrial, trialsOf} from '../../check/trials.js';
import type {BiasFigures} from '../figures-types.js';
import {settingsOf} from '../settings.js';
import {line, type Shown} from '../shown-lines.js';
import {forceWithWay, plainNumber} from '../wording.js';
import {biasAdvice, isDone} from './advice.js';
import {curveOf, leftWord} from './curve.js';
import {biasProblem} from './figures.js';
import {grooveLines} from './groove-lines.js';
import {leastChangePct} from './lever-doubt.js';
import {leverLines} from './lever-lines.js';
import {settingRead, topOfScalePct} from './setting-read.js';
import {frictionFirst} from './skating-lines.js';

function rowsTable({rows, fit}: BiasFigures, isKept: boolean): Shown {
	const out = (pct: number | null) => (pct === null ? 'off scale' : forceWithWay(pct, '%', 1));
	// Once it is to be left so, or was chosen, nothing is to be set.
	const isToBeSet = fit !== null && !isKept && !isDone(fit);
	const head = ['', 'wanted', 'read', 'bias alone', 'left over', ...(isToBeSet ? ['set gauge to'] : [])];
	const body = rows.map(({radiusMm, wantedPct, pullOnPct, biasPct, leftoverPct}) => {
		const target = fit?.targets.find((one) => one.radiusMm === radiusMm);
		return [
			`${plainNumber(radiusMm)} mm`,
			out(wantedPct),
			out(pullOnPct),
			out(biasPct),
			leftoverPct === null ? '-' : leftWord(leftoverPct),
			...(isToBeSet ? [target ? out(target.targetPct) : '-'] : []),
		];
	});
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

/** Every setting that was read, the best one marked, and the one that was kept. */
function settingsTried(check: Check, series: Series, kept: number | undefined): Shown[] {
	const trials = trialsOf(check, series);
	if (trials.length < 2) return [];
	const left = trials.map((trial) => settingRead(check, series, trial)?.bias.fit?.worstBeforePct);
	const least = Math.min(...left.map((pct) => pct ?? Number.POSITIVE_INFINITY));
	return trials.map((trial, index) => {
		const pct = left[index];
		const said = pct === undefined ? 'no figures' : `at most ${pct.toFixed(1)} % left over the record`;
		const marks = [
			...(kept === index + 1 ? ['kept'] : []),
			...(pct === least ? [kept === undefined ? 'best so far' : 'least left'] : []),
		];
		return line(
			`Setting ${nameOfTrial(index + 1, trial)}: ${said}${marks.length === 0 ? '' : ` (${marks.join(', ')})`}`,
			pct === least ? 'good' : 'plain',
		);
	});
}

/** What the readings with the bias on came to; nothing when there are none at two radii. */
export function biasLines(check: Check, series: Series = openSeries(check)): Shown[] {
	const chosen = chosenTrial(check, series);
	const read = chosen && settingRead(check, series, chosen.trial);
	if (!chosen || !read) return [];
	const {document, figures, bias, facts} = read;
	const {number, isKept} = chosen;
	const name = `Bias setting ${isKept ? 'kept: number ' : ''}${nameOfTrial(number, chosen.trial)}`;
	if (bias.rows.every(({pullOnPct}) => pullOnPct === null))
		return [line(name, 'strong'), line('No reading with the bias on that has figures.', 'warn')];
	const problem = biasProblem(document, settingsOf(document), figures.probe);
	return [
		line(`${name}; drag ${bias.effectiveDrag.toFixed(2)} assumed`, 'strong'),
		...frictionFirst(figures),
		...(problem && bias.fit
			? biasAdvice({fit: bias.fit, problem, facts, topPct: topOfScalePct(document), isKept})
			: [line('Too few radii, or no bias worth the name: no best setting.', 'warn')]),
		...settingsTried(check, series, isKept ? number : undefined),
		rowsTable(bias, isKept),
		curveOf({document, probe: figures.probe, rows: bias.rows}),
		...(problem ? leverLines({problem, facts, isKept, leastChangePct: leastChangePct(figures)}) : []),
		...(problem && bias.fit ? grooveLines(problem, document, bias.fit.factor) : []),
	];
}
