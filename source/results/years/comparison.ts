import constants from '../../../shared/constants.json' with {type: 'json'};
import limits from '../../../shared/limits.json' with {type: 'json'};
import type {MeasuredWith, PastCheck, PastProbe} from '../../check/past-check.js';
import {type Change, type CheckedForce, changeBetween} from '../../measures/change.js';
import {isAbove} from '../../measures/compare.js';
import {rootSumSquares} from '../../measures/statistics.js';
import type {Nothing, Said} from '../../said.js';
import {doneSinceLast} from './events.js';

type ComparedName = 'pull' | 'band';

/** How one figure at one radius stands against an earlier check. */
export type ComparedFigure = {
	readonly figure: ComparedName;
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
	readonly notes: readonly Said<NoteValues>[];
	/** Why it cannot be compared, as a whole or at a radius. */
	readonly obstacles: readonly Said<ObstacleValues>[];
};

const mn = (pct: number, playingMn: number): number => (pct / 100) * playingMn;

/** What the pull is compared as: the arm's own where the level of both checks was read, else as it is. */
const pullOf = ({pullPct, tiltPct}: PastProbe, isOwn: boolean): number | null =>
	pullPct === null ? null : pullPct - (isOwn ? (tiltPct ?? 0) : 0);

/** Uncertainty (95 %) of a pull for a comparison; a check issued before setting up was counted in gets it here. */
const pullUncertaintyOf = (
	{pullUncertaintyPct, tiltUncertaintyPct}: PastProbe,
	isOwn: boolean,
	{withoutSettingUp}: MeasuredWith,
): number | null =>
	pullUncertaintyPct === null
		? null
		: rootSumSquares(
				pullUncertaintyPct,
				isOwn ? (tiltUncertaintyPct ?? 0) : 0,
				withoutSettingUp ? constants.normalQuantile975.value * limits.settingUpPct.value : 0,
			);

/** A figure as a force; undefined where it was not measured. */
function forceOf(
	figure: ComparedName,
	probe: PastProbe,
	measuredWith: MeasuredWith,
	isOwn: boolean,
): CheckedForce | undefined {
	const valuePct = figure === 'pull' ? pullOf(probe, isOwn) : probe.bandPct;
	const uncertaintyPct = figure === 'pull' ? pullUncertaintyOf(probe, isOwn, measuredWith) : probe.bandUncertaintyPct;
	if (valuePct === null || uncertaintyPct === null) return;
	return {valueMn: mn(valuePct, measuredWith.playingMn), uncertaintyMn: mn(uncertaintyPct, measuredWith.playingMn)};
}

const isSameRadius = (one: number, other: number): boolean =>
	!isAbove(Math.abs(one - other), limits.sameRadiusMm.value);

/** The figures of a check at a radius, where it was probed there. */
export const probeAt = ({probe}: PastCheck, radiusMm: number): PastProbe | undefined =>
	probe.find((one) => isSameRadius(one.radiusMm, radiusMm));

/** What forbids comparing two checks, by id; `date` is the day of the earlier one. */
export type ObstacleValues = {
	'no-figures': Dated;
	'other-loading': Dated & {readonly before: string; readonly today: string};
	'other-length': Dated & {readonly thenMm: number; readonly nowMm: number};
	'radius-missing': Dated & {readonly radiusMm: number};
};
type Dated = {readonly date: string};

/** What forbids comparing two checks at all. */
export function obstaclesOf(
	{measuredWith: now}: PastCheck,
	{date, measuredWith: then}: PastCheck,
): Said<ObstacleValues>[] {
	if (!now || !then) return [{id: 'no-figures', values: {date}}];
	const found: Said<ObstacleValues>[] = [];
	if (now.loading !== then.loading)
		found.push({id: 'other-loading', values: {date, before: then.loading, today: now.loading}});
	if (isAbove(Math.abs(now.effectiveLengthMm - then.effectiveLengthMm), 0))
		found.push({id: 'other-length', values: {date, thenMm: then.effectiveLengthMm, nowMm: now.effectiveLengthMm}});
	return found;
}

/** What was otherwise, by id; forces can be compared all the same. */
export type NoteValues = {
	/** In one of the two at least; so pulls are compared with what the tilt makes of them. */
	'level-not-read': Nothing;
	'other-force': {readonly thenMn: number; readonly nowMn: number};
	/** Names as typed. */
	'other-tools': {readonly before: string; readonly today: string};
	'other-guard': {readonly before: string; readonly today: string};
};

function notesOf(now: MeasuredWith, then: MeasuredWith): Said<NoteValues>[] {
	const found: Said<NoteValues>[] = [];
	if (isAbove(Math.abs(now.playingMn - then.playingMn), 0))
		found.push({id: 'other-force', values: {thenMn: then.playingMn, nowMn: now.playingMn}});
	if (now.tools !== then.tools) found.push({id: 'other-tools', values: {before: then.tools, today: now.tools}});
	if (now.guard !== then.guard) found.push({id: 'other-guard', values: {before: then.guard, today: now.guard}});
	return found;
}

/** A check against an earlier one of the same arm. */
export function comparisonOf(now: PastCheck, then: PastCheck): Comparison {
	const whole = obstaclesOf(now, then);
	const {measuredWith} = now;
	const thenWith = then.measuredWith;
	if (whole.length > 0 || !measuredWith || !thenWith) return {then, figures: [], notes: [], obstacles: whole};
	const {playingMn} = measuredWith;
	const isOwn = [now, then].every(({probe}) => probe.every(({tiltPct}) => tiltPct !== null));
	const figures = now.probe.flatMap((probe) =>
		(['pull', 'band'] as const).flatMap((figure): ComparedFigure[] => {
			const before = probeAt(then, probe.radiusMm);
			const one = before && forceOf(figure, before, thenWith, isOwn);
			const other = forceOf(figure, probe, measuredWith, isOwn);
			if (!one || !other) return [];
			const change = changeBetween(one, other, playingMn);
			return [{figure, place: probe.place, radiusMm: probe.radiusMm, playingMn, change}];
		}),
	);
	const missing = now.probe.filter(({radiusMm}) => !figures.some((one) => one.radiusMm === radiusMm));
	return {
		then,
		figures,
		notes: [...(isOwn ? [] : [levelNotRead]), ...notesOf(measuredWith, thenWith)],
		obstacles: missing.map(({radiusMm}) => ({id: 'radius-missing', values: {date: then.date, radiusMm}})),
	};
}

const levelNotRead: Said<NoteValues> = {id: 'level-not-read', values: {}};

const ranks = {changed: 2, perhaps: 1, unchanged: 0} as const;

/** The word of a comparison as a whole: the gravest of its figures; undefined when nothing could be compared. */
export const gravestOf = ({figures}: Comparison): Change['verdict'] | undefined =>
	figures.map(({change}) => change.verdict).toSorted((one, other) => ranks[other] - ranks[one])[0];

/** The word of a check against the last one; undefined without one that it can be compared with. */
export function changeSince(now: PastCheck, [last]: readonly PastCheck[]): Change['verdict'] | undefined {
	return last && gravestOf(comparisonOf(now, last));
}

/** A check against the last one and, where there are more, the first of the stretch that the last one belongs to. */
export function comparisonsOf(now: PastCheck, earlier: readonly PastCheck[]): readonly Comparison[] {
	const [last] = earlier;
	if (!last) return [];
	const first = doneSinceLast(now, earlier).length === 0 ? stretchOf(earlier).at(-1) : undefined;
	const against = first && first !== last ? [last, first] : [last];
	return against.map((then) => comparisonOf(now, then));
}

/**
 * The newest checks of an arm that belong together, newest first: back to the last one that followed on something done to
 * the arm, or had changed against the one before.
 */
export function stretchOf(checks: readonly PastCheck[]): readonly PastCheck[] {
	const begins = checks.findIndex((one, index) => {
		const before = checks.slice(index + 1);
		return doneSinceLast(one, before).length > 0 || changeSince(one, before) === 'changed';
	});
	return begins < 0 ? checks : checks.slice(0, begins + 1);
}
