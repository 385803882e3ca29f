import type {LimitPair} from '../../measures/hold-band.js';
import type {SettingRead} from '../../results/bias/setting-read.js';
import {conditionsOf} from '../../results/conditions.js';
import type {Document} from '../../results/document-schema.js';
import {reachesScaleTop} from '../../results/series-read.js';
import {words} from '../../words/index.js';
import {type Aim, aimAt, beyondTop, onGauge, readingWithWay, showsLimits, showsMiddle} from '../on-gauge.js';
import {line, type Shown} from '../shown-lines.js';

/** The rounds that say how far the limits lie apart at a radius: those with the bias on, else those without. */
export function roundsNear(document: Document, radiusMm: number): readonly LimitPair[] {
	const conditions = conditionsOf(document);
	const all = [...(document.bias?.readings ?? []), ...document.probe];
	const near = all.find((one) => one.radiusMm === radiusMm && !reachesScaleTop(one, conditions));
	return (near?.rounds ?? []).filter((round) => !('gauge' in round));
}

/** What the gauge shows at the best setting, radius by radius. */
export const targetAims = ({document, facts, bias}: SettingRead): Aim[] =>
	(bias.fit?.targets ?? []).map(({radiusMm, targetPct}) =>
		aimAt(radiusMm, targetPct, onGauge(document, facts), roundsNear(document, radiusMm)),
	);

/** What to set the gauge to, as it shows it, and where it ends before that; behind it, how far apart its limits then lie. */
export function targetLines(read: SettingRead): {readonly now: readonly Shown[]; readonly behind: readonly Shown[]} {
	const gauge = onGauge(read.document, read.facts);
	const aims = targetAims(read);
	const shown = (reading: number) => readingWithWay(reading, gauge);
	const middles = aims
		.filter((aim) => showsMiddle(aim, gauge))
		.map(({middle, radiusMm}) => ({radiusMm, shown: shown(middle)}));
	const limits = aims.flatMap((aim) =>
		aim.limits && showsLimits(aim, gauge)
			? [{radiusMm: aim.radiusMm, inner: shown(aim.limits.inner), outer: shown(aim.limits.outer)}]
			: [],
	);
	return {
		now: [
			...(middles.length === 0 ? [] : [line(words.bias.setting.setGaugeTo({middles}))]),
			...aims.flatMap((aim) => beyondTop(aim, gauge)),
		],
		behind: limits.length === 0 ? [] : [line(words.bias.setting.thenLimits({limits}))],
	};
}
