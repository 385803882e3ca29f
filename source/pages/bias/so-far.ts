import type {Check} from '../../check/check.js';
import {textOfTrial} from '../../check/trials.js';
import {wantedReadingPct} from '../../measures/skating.js';
import {onRadiusMm} from '../../procedure/bias-on.js';
import type {Facts} from '../../procedure/facts.js';
import type {OnPlace} from '../../procedure/places.js';
import {biasProblem, dragOf} from '../../results/bias/figures.js';
import {lastSettingRead} from '../../results/bias/setting-read.js';
import {partialDocument} from '../../results/document-of-check.js';
import type {Document} from '../../results/document-schema.js';
import {figuresOf} from '../../results/figures.js';
import type {BiasRow} from '../../results/figures-types.js';
import {seriesRead} from '../../results/series-read.js';
import {forceWithWay} from '../../words/wording.js';
import {
	type Aim,
	aimAt,
	aimText,
	beyondTop,
	endText,
	type OnGauge,
	onGauge,
	readingWithWay,
	scaleLine,
	showsMiddle,
} from '../on-gauge.js';
import {line, type Shown, type Tone} from '../shown-lines.js';
import {biasAdvice} from './advice.js';
import {curveOf, leftWord} from './curve.js';
import {roundsNear, targetAims, targetLines} from './targets.js';

/** How the last setting was, and what it was to be changed to, for the hand that changes it. */
export function lastAdvice(check: Check): Shown[] {
	const last = check.series.flatMap(({trials}) => trials).at(-1);
	const text = last ? textOfTrial(last) : '';
	return [...(text === '' ? [] : [line(`It was set to: ${text}.`)]), ...toBeSet(check)];
}

function toBeSet(check: Check): Shown[] {
	const read = lastSettingRead(check);
	const problem = read && biasProblem(seriesRead(read.document), read.figures.probe);
	const fit = read?.bias.fit;
	if (!fit || !problem) return [];
	return biasAdvice({fit, problem, facts: read.facts, targets: targetLines(read)}).filter(
		(one) => one.kind !== 'line' || one.tone !== 'dim',
	);
}

/** What the gauge shows once the bias is as it should be, or that it ends before that. */
function aimLines(name: string, aim: Aim, gauge: OnGauge, tone: Tone): Shown[] {
	if (!showsMiddle(aim, gauge))
		return [line(`${name}: ${readingWithWay(aim.middle, gauge)} in the middle, but ${endText(gauge)}.`, 'warn')];
	return [line(`${name}: the gauge shows ${aimText(aim, gauge)}.`, tone), ...beyondTop(aim, gauge)];
}

/** With the bias on, at one radius: what is wanted there, what was read, and the curve so far. */
export function biasSoFar(check: Check, facts: Facts, place: OnPlace): Shown[] {
	const document = partialDocument(facts, 1);
	const radiusMm = onRadiusMm(facts, place);
	const figures = document && figuresOf(document);
	if (!document || !figures?.bias || radiusMm === undefined) return [];
	const {bias, probe} = figures;
	const isRead = (document.bias?.readings ?? []).length > 0;
	const row = bias.rows.find((one) => one.radiusMm === radiusMm && one.pullOnPct !== null);
	const gauge = onGauge(document, facts);
	return [
		...(row ? [line(readText(row), 'strong')] : aims(check, document, radiusMm, gauge)),
		curveOf({document, probe, rows: isRead ? bias.rows : [], brief: true}),
		...scaleLine(gauge),
	];
}

/** What to aim at where nothing was read yet: what skating asks for, and the best that the setting before promises. */
function aims(check: Check, document: Document, radiusMm: number, gauge: OnGauge): Shown[] {
	const last = lastSettingRead(check);
	const best = last && targetAims(last).find((one) => one.radiusMm === radiusMm);
	const wantedPct = wantedReadingPct(document.arm, dragOf(document), radiusMm);
	const wanted = aimAt(radiusMm, wantedPct, gauge, roundsNear(last?.document ?? document, radiusMm));
	return [
		...aimLines('Wanted here', wanted, gauge, 'strong'),
		...(best ? aimLines('Best with this device', best, gauge, 'plain') : []),
	];
}

const readText = ({wantedPct, pullOnPct, biasPct, leftoverPct}: BiasRow): string =>
	`Read ${forceWithWay(pullOnPct ?? 0, '%', 1)}, wanted ${forceWithWay(wantedPct, '%', 1)}: ${leftWord(leftoverPct ?? 0)}. Bias alone: ${forceWithWay(biasPct ?? 0, '%', 1)}.`;
