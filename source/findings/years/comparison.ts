import limits from '../../../shared/limits.json' with {type: 'json'};
import type {PastCheck, PastProbe} from '../../check/past-check.js';
import {type Change, type CheckedForce, changeBetween} from '../../measures/change.js';
import {isAbove} from '../../measures/compare.js';
import {ownSpreadMn} from '../../measures/own-spread.js';
import {formatIn} from '../../units.js';
import {plainNumber} from '../wording.js';

export type Figure = 'pull' | 'band';

/** How one figure at one radius stands against an earlier check. */
export type ComparedFigure = {
	readonly figure: Figure;
	readonly place: string;
	readonly radiusMm: number;
	/** Playing force of the present check: a difference in percent is of it. */
	readonly playingMn: number;
	readonly change: Change;
};

export type Comparison = {
	readonly then: PastCheck;
	readonly figures: readonly ComparedFigure[];
	/** What was otherwise then, though it can be compared. */
	readonly notes: readonly string[];
	/** Why it cannot be compared, as a whole or at a radius. */
	readonly obstacles: readonly string[];
};

const mn = (pct: number, playingMn: number): number => (pct / 100) * playingMn;

/** A figure as a force; undefined where it was not measured. */
function forceOf(figure: Figure, probe: PastProbe, playingMn: number): CheckedForce | undefined {
	const valuePct = figure === 'pull' ? probe.pullPct : probe.bandPct;
	const uncertaintyPct = figure === 'pull' ? probe.pullUncertaintyPct : probe.bandUncertaintyPct;
	if (valuePct === null || uncertaintyPct === null) return;
	const tiltPct = figure === 'pull' ? probe.tiltUncertaintyPct : null;
	return {
		valueMn: mn(valuePct, playingMn),
		uncertaintyMn: mn(uncertaintyPct, playingMn),
		playingMn,
		...(tiltPct === null ? {} : {levelUncertaintyMn: mn(tiltPct, playingMn)}),
	};
}

const isSameRadius = (one: number, other: number): boolean =>
	!isAbove(Math.abs(one - other), limits.sameRadiusMm.value);

/** The figures of a check at a radius, where it was probed there. */
export const probeAt = ({probe}: PastCheck, radiusMm: number): PastProbe | undefined =>
	probe.find((one) => isSameRadius(one.radiusMm, radiusMm));

/** What forbids comparing two checks at all. */
export function obstaclesOf({measuredWith: now}: PastCheck, {measuredWith: then}: PastCheck): string[] {
	if (!now || !then) return ['one of the two came to no figures'];
	return [
		...(now.loading === then.loading
			? []
			: [`its tracking force was made by ${loadingWords(then.loading)} then, by ${loadingWords(now.loading)} now`]),
		...(isAbove(Math.abs(now.effectiveLengthMm - then.effectiveLengthMm), 0)
			? [
					`its effective length was ${formatIn(then.effectiveLengthMm, 'mm')} then, ${formatIn(now.effectiveLengthMm, 'mm')} now`,
				]
			: []),
	];
}

const loadingWords = (loading: string): string => (loading === 'spring' ? 'a spring' : 'gravity');
const guardWords: Readonly<Record<string, string>> = {
	included: 'weighed with the guard',
	'left-out': 'weighed without the guard',
	none: 'without a guard',
};

/** What was otherwise, though forces can be compared all the same. */
function notesOf({measuredWith: now}: PastCheck, {measuredWith: then}: PastCheck): string[] {
	if (!now || !then) return [];
	return [
		...(isAbove(Math.abs(now.playingMn - then.playingMn), 0)
			? [
					`the playing force was ${formatIn(then.playingMn, 'gf')} then, ${formatIn(now.playingMn, 'gf')} now, so forces are compared`,
				]
			: []),
		...(now.tools === then.tools ? [] : [`measured with '${then.tools}' then, with '${now.tools}' now`]),
		...(now.guard === then.guard
			? []
			: [`${guardWords[then.guard] ?? then.guard} then, ${guardWords[now.guard] ?? now.guard} now`]),
	];
}

/** The forces of checks that can be compared with this one at a radius, for the arm's own spread. */
function forcesAt(figure: Figure, radiusMm: number, now: PastCheck, earlier: readonly PastCheck[]): number[] {
	return earlier
		.filter((one) => obstaclesOf(now, one).length === 0)
		.flatMap((one) => {
			const probe = probeAt(one, radiusMm);
			const force = probe && one.measuredWith && forceOf(figure, probe, one.measuredWith.playingMn);
			return force ? [force.valueMn] : [];
		});
}

/** A check against an earlier one of the same arm; `earlier` are all that came before, for the arm's own spread. */
export function comparisonOf(now: PastCheck, then: PastCheck, earlier: readonly PastCheck[]): Comparison {
	const whole = obstaclesOf(now, then);
	const {measuredWith} = now;
	if (whole.length > 0 || !measuredWith || !then.measuredWith) return {then, figures: [], notes: [], obstacles: whole};
	const {playingMn} = measuredWith;
	const thenPlayingMn = then.measuredWith.playingMn;
	const figures = now.probe.flatMap((probe) =>
		(['pull', 'band'] as const).flatMap((figure): ComparedFigure[] => {
			const before = probeAt(then, probe.radiusMm);
			const one = before && forceOf(figure, before, thenPlayingMn);
			const other = forceOf(figure, probe, playingMn);
			if (!one || !other) return [];
			const spread = ownSpreadMn(forcesAt(figure, probe.radiusMm, now, earlier));
			const change = changeBetween(one, other, {ownSpreadMn: spread});
			return [{figure, place: probe.place, radiusMm: probe.radiusMm, playingMn, change}];
		}),
	);
	const missing = now.probe.filter(({radiusMm}) => !figures.some((one) => one.radiusMm === radiusMm));
	return {
		then,
		figures,
		notes: notesOf(now, then),
		obstacles: missing.map(({radiusMm}) => `there are no figures of both at ${plainNumber(radiusMm)} mm`),
	};
}

const ranks = {changed: 2, perhaps: 1, 'not changed': 0} as const;

/** The word of a comparison as a whole: the gravest of its figures; undefined when nothing could be compared. */
export const gravestOf = ({figures}: Comparison): Change['verdict'] | undefined =>
	figures.map(({change}) => change.verdict).toSorted((one, other) => ranks[other] - ranks[one])[0];

/** The word of a check against the last one; undefined without one that it can be compared with. */
export function changeSince(now: PastCheck, earlier: readonly PastCheck[]): Change['verdict'] | undefined {
	const [last] = earlier;
	return last && gravestOf(comparisonOf(now, last, earlier));
}

/** A check against the last one and, where there are more, the first. */
export function comparisonsOf(now: PastCheck, earlier: readonly PastCheck[]): readonly Comparison[] {
	const [last] = earlier;
	const first = earlier.at(-1);
	if (!last) return [];
	const against = first && first !== last ? [last, first] : [last];
	return against.map((then) => comparisonOf(now, then, earlier));
}
