import type {Check, Series} from '../../check/check.js';
import {openSeries} from '../../check/series.js';
import {chosenTrial, nameOfTrial, trialsOf} from '../../check/trials.js';
import {biasProblem} from '../../results/bias/figures.js';
import {type SettingRead, settingRead} from '../../results/bias/setting-read.js';
import {seriesRead} from '../../results/series-read.js';
import {forceWithWay, plainNumber} from '../../words/wording.js';
import {type Aim, onGauge, readingWithWay, scaleLine, showsMiddle} from '../on-gauge.js';
import {line, type Shown} from '../shown-lines.js';
import {biasAdvice, isDone} from './advice.js';
import {curveOf, leftWord} from './curve.js';
import {grooveLines} from './groove-lines.js';
import {leastChangePct} from './lever-doubt.js';
import {leverLines} from './lever-lines.js';
import {frictionFirst} from './skating-lines.js';
import {targetAims, targetLines} from './targets.js';

/** Heading of the column that is what the gauge shows; all others are percent of the playing force. */
export const gaugeColumn = 'set gauge to';

function rowsTable(read: SettingRead, isKept: boolean): Shown {
	const {rows, fit} = read.bias;
	const out = (pct: number | null) => (pct === null ? 'off scale' : forceWithWay(pct, '%', 1));
	// Once it is to be left so, or was chosen, nothing is to be set.
	const toBeSet = fit !== null && !isKept && !isDone(fit) ? targetAims(read) : undefined;
	const head = ['', 'wanted', 'read', 'bias alone', 'left over', ...(toBeSet ? [gaugeColumn] : [])];
	const body = rows.map(({radiusMm, wantedPct, pullOnPct, biasPct, leftoverPct}) => [
		`${plainNumber(radiusMm)} mm`,
		out(wantedPct),
		out(pullOnPct),
		out(biasPct),
		leftoverPct === null ? '-' : leftWord(leftoverPct),
		...(toBeSet
			? [
					gaugeCell(
						toBeSet.find((one) => one.radiusMm === radiusMm),
						read,
					),
				]
			: []),
	]);
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

function gaugeCell(aim: Aim | undefined, {document, facts}: SettingRead): string {
	if (!aim) return '-';
	const gauge = onGauge(document, facts);
	return showsMiddle(aim, gauge) ? readingWithWay(aim.middle, gauge) : 'off scale';
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
	const problem = biasProblem(seriesRead(document), figures.probe);
	return [
		line(`${name}; drag ${bias.effectiveDrag.toFixed(2)} assumed`, 'strong'),
		...frictionFirst(figures),
		...(problem && bias.fit
			? biasAdvice({fit: bias.fit, problem, facts, targets: targetLines(read), isKept})
			: [line('Too few radii, or no bias worth the name: no best setting.', 'warn')]),
		...settingsTried(check, series, isKept ? number : undefined),
		...scaleLine(onGauge(document, facts)),
		rowsTable(read, isKept),
		curveOf({document, probe: figures.probe, rows: bias.rows}),
		...(problem ? leverLines({problem, facts, isKept, leastChangePct: leastChangePct(figures)}) : []),
		...(problem && bias.fit ? grooveLines(problem, document, bias.fit.factor) : []),
	];
}
