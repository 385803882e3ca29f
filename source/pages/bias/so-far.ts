import type {Check} from '../../check/check.js';
import {textOfTrial} from '../../check/trials.js';
import {toStep} from '../../measures/hold-band.js';
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
import {words} from '../../words/index.js';
import {
	type Aim,
	aimAt,
	aimText,
	beyondTop,
	type OnGauge,
	onGauge,
	readingWithWay,
	scaleLine,
	showsLimits,
	showsMiddle,
} from '../on-gauge.js';
import {line, type Shown, unheard} from '../shown-lines.js';
import {biasAdvice} from './advice.js';
import {curveOf, dragTaken} from './curve.js';
import {roundsNear, targetAims, targetLines} from './targets.js';

/**
 * How the last setting was, and what it was to be changed to, for the hand that changes it.
 *
 * @param isCautioned the step itself says to lock the arm
 */
export function lastAdvice(check: Check, isCautioned: boolean): Shown[] {
	const last = check.series.flatMap(({trials}) => trials).at(-1);
	const text = last ? textOfTrial(last) : '';
	return [...(text === '' ? [] : [line(words.bias.setting.wasSetTo({text}))]), ...toBeSet(check, isCautioned)];
}

function toBeSet(check: Check, isCautioned: boolean): Shown[] {
	const read = lastSettingRead(check);
	const problem = read && biasProblem(seriesRead(read.document), read.figures.probe);
	const fit = read?.bias.fit;
	if (!fit || !problem) return [];
	const {caution, now} = biasAdvice({fit, problem, facts: read.facts, targets: targetLines(read)});
	return isCautioned ? [...now] : [...caution, ...now];
}

/** What the gauge shows once the bias is as it should be, or that it ends before that. */
function aimLines(of: 'wanted' | 'best', aim: Aim, gauge: OnGauge): Shown[] {
	const {aimShown, aimBeyondTop} = words.bias.setting;
	if (!showsMiddle(aim, gauge)) {
		const middle = readingWithWay(aim.middle, gauge);
		return [line(aimBeyondTop({...gauge, of, middle}), 'warn')];
	}
	const tone = of === 'wanted' ? 'strong' : 'plain';
	return [line(aimShown({of, shows: aimText(aim, gauge)}), tone), ...beyondTop(aim, gauge)];
}

/**
 * What the gauge is to show at a radius, in its own unit: at the inner limit, or in the middle of both where nobody knows
 * how far they lie apart; undefined where it cannot.
 */
export function wantedReading(facts: Facts, place: OnPlace) {
	const document = partialDocument(facts, 1);
	const radiusMm = onRadiusMm(facts, place);
	if (!document || radiusMm === undefined) return;
	const gauge = onGauge(document, facts);
	const wantedPct = wantedReadingPct(document.arm, dragOf(document), radiusMm);
	const aim = aimAt(radiusMm, wantedPct, gauge, roundsNear(document, radiusMm));
	if (gauge.isHandForce || !showsMiddle(aim, gauge)) return;
	const inner = aim.limits && showsLimits(aim, gauge) ? aim.limits.inner : undefined;
	const {step, unit} = gauge;
	return {value: toStep(inner ?? aim.middle, step), step, unit, of: inner === undefined ? 'middle' : 'inner'} as const;
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
		...(row ? [line(readHere(row), 'strong')] : aims(check, document, radiusMm, gauge)),
		unheard(curveOf({document, probe, rows: isRead ? bias.rows : [], brief: true})),
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
		...aimLines('wanted', wanted, gauge),
		line(words.bias.setting.drag(dragTaken(document))),
		...(best ? aimLines('best', best, gauge) : []),
	];
}

const readHere = ({wantedPct, pullOnPct, biasPct, leftoverPct}: BiasRow): string =>
	words.bias.curve.readHere({
		wantedPct,
		pullOnPct: pullOnPct ?? 0,
		biasPct: biasPct ?? 0,
		leftoverPct: leftoverPct ?? 0,
	});
