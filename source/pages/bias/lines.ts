import type {Check, Series} from '../../check/check.js';
import {openSeries} from '../../check/series.js';
import {chosenTrial, nameOfTrial, trialsOf} from '../../check/trials.js';
import {biasProblem} from '../../results/bias/figures.js';
import {type SettingRead, settingRead} from '../../results/bias/setting-read.js';
import {seriesRead} from '../../results/series-read.js';
import {words} from '../../words/index.js';
import {mm} from '../../words/numbers.js';
import {type Aim, onGauge, readingWithWay, scaleLine, showsMiddle} from '../on-gauge.js';
import {heardOf, line, type Shown, table, unheard} from '../shown-lines.js';
import {biasAdvice, isDone} from './advice.js';
import {curveOf, dragTaken} from './curve.js';
import {grooveLines} from './groove-lines.js';
import {leastChangePct, leverLines} from './lever-lines.js';
import {frictionFirst} from './skating-lines.js';
import {targetAims, targetLines} from './targets.js';

function rowsTable(read: SettingRead, isKept: boolean): Shown {
	const {rows, fit} = read.bias;
	const {offScale, columns} = words.bias.setting;
	const out = (pct: number | null) => (pct === null ? offScale : words.figures.forceWithWay(pct, '%', 1));
	// Once it is to be left so, or was chosen, nothing is to be set.
	const toBeSet = fit !== null && !isKept && !isDone(fit) ? targetAims(read) : undefined;
	const head = ['', columns.wanted, columns.read, columns.alone, columns.left];
	const cells = rows.map(({radiusMm, wantedPct, pullOnPct, biasPct, leftoverPct}) => [
		mm(radiusMm),
		out(wantedPct),
		out(pullOnPct),
		out(biasPct),
		leftoverPct === null ? '-' : words.bias.curve.leftOver({leftoverPct}),
	]);
	const asRead = table(head, cells);
	if (!toBeSet) return asRead;
	const aims = rows.map(({radiusMm}) => toBeSet.find((one) => one.radiusMm === radiusMm));
	const withAims = cells.map((row, index) => [...row, gaugeCell(aims[index], read)]);
	// The advice before it says what to set the gauge to.
	return {...table([...head, columns.setGaugeTo], withAims), heard: heardOf(asRead)};
}

function gaugeCell(aim: Aim | undefined, {document, facts}: SettingRead): string {
	if (!aim) return '-';
	const gauge = onGauge(document, facts);
	return showsMiddle(aim, gauge) ? readingWithWay(aim.middle, gauge) : words.bias.setting.offScale;
}

/** Every setting that was read, the best one marked, and the one that was kept. */
function settingsTried(check: Check, series: Series, kept: number | undefined): Shown[] {
	const trials = trialsOf(check, series);
	if (trials.length < 2) return [];
	const left = trials.map((trial) => settingRead(check, series, trial)?.bias.fit?.worstBeforePct);
	const least = left.indexOf(Math.min(...left.filter((pct) => pct !== undefined)));
	return trials.map((trial, index) => {
		const tried = {
			name: nameOfTrial(index + 1, trial),
			leftPct: left[index],
			isKept: kept === index + 1,
			isLeast: index === least,
			isChosen: kept !== undefined,
		};
		return line(words.bias.setting.tried(tried), tried.isLeast ? 'good' : 'plain');
	});
}

/** What the readings with the bias on came to; nothing when there are none at two radii. */
export function biasLines(check: Check, series: Series = openSeries(check)): Shown[] {
	const chosen = chosenTrial(check, series);
	const read = chosen && settingRead(check, series, chosen.trial);
	if (!chosen || !read) return [];
	const {document, figures, bias, facts} = read;
	const {number, isKept} = chosen;
	const name = nameOfTrial(number, chosen.trial);
	if (bias.rows.every(({pullOnPct}) => pullOnPct === null))
		return [line(words.bias.setting.name({name, isKept}), 'strong'), line(words.bias.setting.noFigures, 'warn')];
	const problem = biasProblem(seriesRead(document), figures.probe);
	const {fit} = bias;
	const advice = problem && fit && biasAdvice({fit, problem, facts, targets: targetLines(read), isKept});
	const behind = [
		...settingsTried(check, series, isKept ? number : undefined),
		line(words.bias.setting.drag(dragTaken(document))),
		...(advice?.behind ?? []),
		...scaleLine(onGauge(document, facts)),
		rowsTable(read, isKept),
		...(problem
			? leverLines({problem, facts, isKept, leastChangePct: leastChangePct(figures), hiddenPct: fit?.frictionFloorPct})
			: []),
		...(problem && fit ? grooveLines(problem, document, fit.factor) : []),
	];
	return [
		line(
			fit
				? words.bias.setting.leaves({name, isKept, leftPct: fit.worstBeforePct})
				: words.bias.setting.name({name, isKept}),
			'strong',
		),
		...frictionFirst(figures),
		...(advice ? [...advice.caution, ...advice.now] : [line(words.bias.setting.noBest, 'warn')]),
		unheard(curveOf({document, probe: figures.probe, rows: bias.rows})),
		...(isKept ? behind : onLeaf(behind)),
	];
}

/** What bears it out, on pages of its own. */
const onLeaf = ([first, ...others]: readonly Shown[]): readonly Shown[] =>
	first ? [{...first, leaf: words.pages.verdict.numbers}, ...others] : [];
