import type {Check} from '../../check/check.js';
import {textOfTrial} from '../../check/trials.js';
import {wantedReadingPct} from '../../measures/skating.js';
import {onRadiusMm} from '../../procedure/bias-on.js';
import type {Facts} from '../../procedure/facts.js';
import type {OnPlace} from '../../procedure/places.js';
import {partialDocument} from '../document-of-check.js';
import {figuresOf} from '../figures.js';
import type {BiasRow} from '../figures-types.js';
import {settingsOf} from '../settings.js';
import {line, type Shown} from '../shown-lines.js';
import {forceWithWay} from '../wording.js';
import {biasAdvice} from './advice.js';
import {curveOf, leftWord} from './curve.js';
import {biasProblem} from './figures.js';
import {lastSettingRead, topOfScalePct} from './setting-read.js';

/** How the last setting was, and what it was to be changed to, for the hand that changes it. */
export function lastAdvice(check: Check): Shown[] {
	const last = check.series.flatMap(({trials}) => trials).at(-1);
	const text = last ? textOfTrial(last) : '';
	return [...(text === '' ? [] : [line(`It was set to: ${text}.`)]), ...toBeSet(check)];
}

function toBeSet(check: Check): Shown[] {
	const read = lastSettingRead(check);
	const problem = read && biasProblem(read.document, settingsOf(read.document), read.figures.probe);
	const fit = read?.bias.fit;
	if (!fit || !problem) return [];
	const {document, facts} = read;
	return biasAdvice({fit, problem, facts, topPct: topOfScalePct(document)}).filter(
		(one) => one.kind !== 'line' || one.tone !== 'dim',
	);
}

/** The reading to aim at, from the setting before. */
function aim(check: Check, radiusMm: number): Shown[] {
	const target = lastSettingRead(check)?.bias.fit?.targets.find((one) => one.radiusMm === radiusMm);
	return target ? [line(`Best with this device: ${forceWithWay(target.targetPct, '%', 1)} here.`)] : [];
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
	const wanted = `Wanted here: ${forceWithWay(wantedReadingPct(document.arm, bias.effectiveDrag, radiusMm), '%', 1)} in the middle of both limits.`;
	return [
		line(row ? readingText(row) : wanted, 'strong'),
		...(row ? [] : aim(check, radiusMm)),
		curveOf({document, probe, rows: isRead ? bias.rows : [], brief: true}),
	];
}

const readingText = ({wantedPct, pullOnPct, biasPct, leftoverPct}: BiasRow): string =>
	`Read ${forceWithWay(pullOnPct ?? 0, '%', 1)}, wanted ${forceWithWay(wantedPct, '%', 1)}: ${leftWord(leftoverPct ?? 0)}. Bias alone: ${forceWithWay(biasPct ?? 0, '%', 1)}.`;
