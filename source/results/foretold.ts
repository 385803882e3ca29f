import {isAtLeast, isAtMost} from '../measures/compare.js';
import {rootSumSquares} from '../measures/statistics.js';
import {type RemedyId, remedyById} from '../procedure/remedies.js';
import {type Figures, isMeasured, type MeasuredRadius} from './figures-types.js';

/** How far the pull should move at a radius, in percent, positive toward the rim. */
type Move = {readonly radiusMm: number; readonly movePct: number};

/** What readings should do after a remedy. `isSure`: in any case; else only should it have been the cause. */
export type Foretold = {readonly isSure: boolean; readonly moves: readonly Move[]};

/** What a remedy did. Forces in percent, positive toward the rim or wider; at the radius that tells most. */
export type SuspectOutcome = {
	readonly remedy: RemedyId;
	readonly radiusMm: number;
	readonly seenPct: number;
} /** 'cause': as it should move were this the cause. 'no-cause': it did not move. 'in-part': neither. */ & (
	| {
			readonly kind: 'as-foretold' | 'something-else' | 'cause' | 'no-cause' | 'in-part' | 'cannot-tell';
			readonly foretoldPct: number;
	  }
	/** Nothing could be foretold in numbers. */
	| {readonly kind: 'changed' | 'unchanged'; readonly figure: 'pull' | 'band'}
);

const endOf = ({probe}: Figures, place: 'inner' | 'outer'): MeasuredRadius | undefined =>
	probe.filter(isMeasured).find((one) => one.place === place);

const own = ({ownPullPct, pullPct}: MeasuredRadius): number => ownPullPct ?? pullPct;

/** What the arm's own pull should move by at a radius, were this the cause; undefined where no number can be foretold. */
function ownMovePct(remedy: RemedyId, at: MeasuredRadius, before: Figures): number | undefined {
	if (remedy === 'level' || remedy === 'again') return 0;
	// What leans halves with the force; what leads, bias or a magnet make stays.
	if (remedy === 'half-force') return -own(at) / 2;
	if (remedy === 'leads-off') return -own(at);
	if (remedy !== 'lead-loop') return;
	// Centred, half the difference is left on either side.
	const [inner, outer] = [endOf(before, 'inner'), endOf(before, 'outer')];
	return inner && outer ? -(own(inner) + own(outer)) / 2 : undefined;
}

const isSure = (remedy: RemedyId): boolean => remedy === 'level' || remedy === 'again';

/** What readings should do after a remedy, before it is tried: a level deck, or half the force, takes its share of the tilt. */
export function foretoldBefore(remedy: RemedyId, before: Figures): Foretold | null {
	const share = remedy === 'level' ? 1 : remedy === 'half-force' ? 0.5 : 0;
	const moves = before.probe.filter(isMeasured).flatMap((at) => {
		const ownPct = ownMovePct(remedy, at, before);
		if (ownPct === undefined || (remedy === 'level' && at.tiltSharePct === null)) return [];
		return [{radiusMm: at.radiusMm, movePct: ownPct - share * (at.tiltSharePct ?? 0)}];
	});
	// Where next to nothing would move, nothing tells.
	const tells = isSure(remedy) || moves.some(({movePct}) => isAtLeast(Math.abs(movePct), leastToldPct));
	return moves.length > 0 && tells ? {isSure: isSure(remedy), moves} : null;
}

/** What prints as more than nothing, in percent. */
const leastToldPct = 0.05;

type Seen = {
	readonly radiusMm: number;
	readonly seenPct: number;
	/** What the tilt's share moved by: it was read, so it is foretold whatever the cause. */
	readonly tiltPct: number;
	readonly foretoldPct: number | undefined;
	readonly bandPct: number;
	readonly uncertaintyPct: number;
	readonly bandUncertaintyPct: number;
};

function seenAt(remedy: RemedyId, at: MeasuredRadius, now: MeasuredRadius, before: Figures): Seen {
	const tiltPct = at.tiltSharePct === null || now.tiltSharePct === null ? 0 : now.tiltSharePct - at.tiltSharePct;
	const ownPct = ownMovePct(remedy, at, before);
	return {
		radiusMm: at.radiusMm,
		seenPct: now.pullPct - at.pullPct,
		tiltPct,
		foretoldPct: ownPct === undefined ? undefined : ownPct + tiltPct,
		bandPct: now.bandPct - at.bandPct,
		uncertaintyPct: rootSumSquares(
			...[at, now].flatMap((one) => [one.pullUncertaintyPct, one.tiltShareUncertaintyPct ?? 0]),
		),
		bandUncertaintyPct: rootSumSquares(at.bandUncertaintyPct, now.bandUncertaintyPct),
	};
}

/** Whether a remedy showed that what it looked at is not the cause. */
export const isNoCause = ({kind}: SuspectOutcome): boolean => kind === 'no-cause' || kind === 'unchanged';

/** The one that stands out most. */
const most = (all: readonly Seen[], of: (one: Seen) => number): Seen | undefined =>
	all.toSorted((one, other) => of(other) - of(one))[0];

/** What a remedy did between two series, foretold and seen side by side; undefined where no radius has figures of both. */
export function outcomeOfRemedy(remedy: RemedyId, before: Figures, after: Figures): SuspectOutcome | undefined {
	const all = before.probe.filter(isMeasured).flatMap((at) => {
		const now = after.probe.filter(isMeasured).find(({place}) => place === at.place);
		return now ? [seenAt(remedy, at, now, before)] : [];
	});
	return all.every(({foretoldPct}) => foretoldPct !== undefined)
		? againstForetold(remedy, all)
		: withoutForetold(remedy, all);
}

const offBy = ({seenPct, foretoldPct = 0}: Seen): number => Math.abs(seenPct - foretoldPct);
const movedBy = ({seenPct, tiltPct}: Seen): number => Math.abs(seenPct - tiltPct);

function againstForetold(remedy: RemedyId, all: readonly Seen[]): SuspectOutcome | undefined {
	const isAsForetold = all.every((one) => isAtMost(offBy(one), one.uncertaintyPct));
	const isUnmoved = all.every((one) => isAtMost(movedBy(one), one.uncertaintyPct));
	const at = isAsForetold
		? most(all, ({foretoldPct = 0}) => Math.abs(foretoldPct))
		: most(all, (one) => offBy(one) / one.uncertaintyPct);
	if (!at) return;
	const {radiusMm, seenPct, foretoldPct = 0} = at;
	return {remedy, radiusMm, seenPct, foretoldPct, kind: kindOf(remedy, isAsForetold, isUnmoved)};
}

function kindOf(remedy: RemedyId, isAsForetold: boolean, isUnmoved: boolean) {
	if (isSure(remedy)) return isAsForetold ? 'as-foretold' : 'something-else';
	if (isAsForetold) return isUnmoved ? 'cannot-tell' : 'cause';
	return isUnmoved ? 'no-cause' : 'in-part';
}

function withoutForetold(remedy: RemedyId, all: readonly Seen[]): SuspectOutcome | undefined {
	const {shows: figure} = remedyById[remedy];
	const size = (one: Seen) => (figure === 'pull' ? movedBy(one) : Math.abs(one.bandPct));
	const allowed = (one: Seen) => (figure === 'pull' ? one.uncertaintyPct : one.bandUncertaintyPct);
	const at = most(all, (one) => size(one) / allowed(one));
	if (!at) return;
	const isSame = isAtMost(size(at), allowed(at));
	const seenPct = figure === 'pull' ? at.seenPct : at.bandPct;
	return {remedy, radiusMm: at.radiusMm, seenPct, figure, kind: isSame ? 'unchanged' : 'changed'};
}
