import type {PastCheck, PastProbe} from '../../../check/past-check.js';
import {dayText} from '../../dates.js';
import {mm, plainNumber, rounded, span} from '../../numbers.js';
import {found} from '../../speaker.js';
import {placeName} from '../entries.js';
import {forceWithWay, sideForce, verdictName} from '../figures.js';

type Kept = {readonly radiusMm: number; readonly pullPct: number; readonly bandPct: number};
type WithUncertainty = Kept & {readonly pullUncertaintyPct: number; readonly bandUncertaintyPct: number};

const notKnown = 'not known';
const verdictNames: Readonly<Record<string, string>> = {
	...verdictName,
	none: 'no verdict',
	void: 'void',
	'not-known': notKnown,
	stopped: 'stopped',
	interrupted: 'interrupted',
};
/** One that is not known here stands for itself. */
const verdictOf = ({verdict}: {readonly verdict: string}): string => found(verdictNames, verdict) ?? verdict;

/** Past checks: their list, one of them, and why one does not count. */
export const past = {
	title: 'Past checks',
	none: 'No check on file yet.',
	/** Which of them are shown, and what the columns of the list are. */
	span: ({first, last, total, hasKeys, hasFigures = true}: SpanOfList) =>
		`${first} to ${last} of ${total}${hasKeys ? '; ← newer, → older' : ''}.${hasFigures ? ' Columns: date, arm, verdict; then at each radius in mm the pull/friction in %.' : ' Date, arm, verdict.'}`,
	/** Where the filter leaves none. */
	noneSuch: 'No such check on file.',
	filter: {
		title: 'Which past checks?',
		now: ({arm, year, verdict}: Wanted) => {
			const parts = [arm, year, ...(verdict === undefined ? [] : [verdictOf({verdict})])].filter(
				(one) => one !== undefined,
			);
			return `filter: ${parts.length === 0 ? 'all' : parts.join(', ')}`;
		},
		byArm: 'one arm',
		byYear: 'one year',
		byVerdict: 'one verdict',
		all: 'show all',
		typePart: "Type part of the arm's name. Enter alone: all arms.",
		whichYear: 'Which year?',
		whichVerdict: 'Which verdict?',
		verdict: verdictOf,
	},
	older: 'older',
	/** A check that did not come to its end, or does not count, says so in place of its verdict. */
	state: ({outcome, verdict, voidBecause, isVoidUnknown}: StateOfPast) => {
		if (isVoidUnknown) return notKnown;
		if (voidBecause !== undefined) return verdictOf({verdict: 'void'});
		return verdictOf({verdict: outcome === 'complete' ? (verdict ?? 'none') : outcome});
	},
	/** The figures at a radius, as short as can be. */
	figures: ({radiusMm, pullPct, bandPct}: Kept) =>
		`${plainNumber(radiusMm)}: ${forceWithWay(pullPct, '', 1).replace('  ', ' ').trim()}/${rounded(bandPct, 1)}`,
	offScale: ({radiusMm}: Pick<PastProbe, 'radiusMm'>) => `${plainNumber(radiusMm)}: off scale`,
	/** The same with every ±. */
	wholeFigures: ({radiusMm, pullPct, pullUncertaintyPct, bandPct, bandUncertaintyPct}: WithUncertainty) =>
		`${mm(radiusMm)} ${sideForce(pullPct, pullUncertaintyPct)}, friction ${span(bandPct, bandUncertaintyPct)}`,
	wholeOffScale: ({radiusMm}: Pick<PastProbe, 'radiusMm'>) => `${mm(radiusMm)} off scale`,
	check: {
		title: 'Past check',
		titleOf: ({arm, date}: Pick<PastCheck, 'arm' | 'date'>) => `${arm}: check of ${dayText(date)}`,
		compare: 'compare with another check',
		putBack: 'put the deck back now',
		back: 'back to the list',
		markVoid: 'mark it void',
		countAgain: 'let it count again',
	},
	compared: {
		which: ({arm, date}: Pick<PastCheck, 'arm' | 'date'>) => `${arm}: compare ${dayText(date)} with which check?`,
		title: ({arm}: Pick<PastCheck, 'arm'>) => `${arm}: two checks`,
		columns: ({before, now}: {readonly before: string; readonly now: string}) => ['', dayText(before), dayText(now)],
		pull: ({place}: {readonly place: string}) => `${placeName(place)} pull`,
		band: ({place}: {readonly place: string}) => `${placeName(place)} friction`,
		verdict: 'verdict',
		notMeasured: '-',
		other: 'another check',
	},
	reason: {
		title: 'Why does this check not count?',
		whatItMeans:
			'A void check stays on file with its reason. It no longer counts in comparisons, trend and the date of the next check. You can undo this.',
		inFewWords: 'Type the reason, at most 80 letters.',
		given: ({reason}: {readonly reason: string}) => `Reason: ${reason}`,
		question: 'Mark this check void?',
	},
};

type StateOfPast = Pick<PastCheck, 'outcome' | 'verdict' | 'voidBecause' | 'isVoidUnknown'>;

type Wanted = {
	readonly arm: string | undefined;
	readonly year: string | undefined;
	readonly verdict: string | undefined;
};

type SpanOfList = {
	readonly first: number;
	readonly last: number;
	readonly total: number;
	/** Keys turn the list. */
	readonly hasKeys: boolean;
	/** There is room for them; so where nothing else is said. */
	readonly hasFigures?: boolean;
};
