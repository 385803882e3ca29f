import {type RemedyId, remedyById} from '../procedure/remedies.js';
import type {OpenFigure} from './closing-rows.js';
import type {Finding, FindingCode} from './diagnose.js';
import type {PlaceName} from './document-schema.js';
import type {AtWorst, Figures} from './figures-types.js';
import type {Who} from './finding-row.js';
import {type Foretold, foretoldBefore, isNoCause, type SuspectOutcome} from './foretold.js';
import {isSuspected, type SuspectedCode, suspectsOf} from './suspects.js';

/** The one thing to do now. It follows from the first finding alone, so nothing beside it can contradict it. */
export type NextAction = {
	/** The finding that it belongs to. */
	readonly code: FindingCode;
	readonly who: Who;
	/** Roughly, at the bench; null where nothing is done there. Defaults of this project. */
	readonly minutes: number | null;
} & (
	| {readonly kind: 'suspect'; readonly remedy: RemedyId; readonly foretold: Foretold | null}
	/** Rounds at one more radius between the inner and the outer one. */
	| {readonly kind: 'radius-between'}
	/** Rounds as used at a radius until there are so many in all. */
	| {readonly kind: 'more-rounds'; readonly place: PlaceName; readonly radiusMm: number; readonly total: number}
	/** The rounds do not agree: the odd one is struck out, or they are taken again. */
	| {readonly kind: 'odd-round'; readonly place: PlaceName; readonly radiusMm: number}
	/** A remedy did something: a whole series judges the arm anew. */
	| {readonly kind: 'judge'}
	/** Something about the bias that is on. */
	| {readonly kind: 'bias'}
	/** `finestPct`: how fine bias can be set until then, where that was found. */
	| {readonly kind: 'maker'; readonly finestPct: number | null}
	| {readonly kind: 'leave'; readonly atWorst: AtWorst}
);

export type ActionCase = {
	readonly figures: Figures;
	/** In order of weight. */
	readonly findings: readonly Finding[];
	/** What was tried so far, oldest first. */
	readonly tried: readonly RemedyId[];
	/** Whether a remedy makes sense for this arm and deck. */
	readonly fits: (id: RemedyId) => boolean;
	/** What the last remedy did, where the rounds since only show that; null where no figure tells. */
	readonly shown?: SuspectOutcome | null;
};

/** The next action; undefined only where nothing was found, which figures of a whole document never leave. */
export function nextActionOf(given: ActionCase): NextAction | undefined {
	const [first] = given.findings;
	if (!first) return;
	const action = isToBeJudged(given) ? judge(first.code) : actionOn(first, given);
	const {undoneBy} = remedyById[given.tried.at(-1) ?? 'again'];
	return undoneBy && action.kind !== 'suspect' ? suspect(first.code, undoneBy, given.figures) : action;
}

const judge = (code: FindingCode): NextAction => ({code, kind: 'judge', who: 'technician', minutes: minutesToJudge});

/** Whether a remedy did something, as far as few rounds show it. */
const isToBeJudged = ({shown}: ActionCase): boolean =>
	shown !== undefined && (shown === null || !(isNoCause(shown) || shown.kind === 'cannot-tell'));

function actionOn(first: Finding, given: ActionCase): NextAction {
	const {code} = first;
	const {atWorst} = given.figures;
	switch (code) {
		case 'off-scale':
		case 'moved':
		case 'tilt-explains':
		case 'not-level':
		case 'constant-pull':
		case 'spring-pull':
		case 'runaway-pull':
		case 'friction':
		case 'friction-local':
			return nextSuspect(code, given) ?? {code, kind: 'maker', who: 'maker', minutes: null, finestPct: null};
		case 'pull-and-friction': {
			const {finestPct} = first.values;
			return nextSuspect(code, given) ?? {code, kind: 'maker', who: 'maker', minutes: null, finestPct};
		}
		case 'no-pattern':
			if (!given.figures.probe.some(({place}) => place === 'other'))
				return {code, kind: 'radius-between', who: 'technician', minutes: minutesOfSeries};
			return nextSuspect(code, given) ?? {code, kind: 'maker', who: 'maker', minutes: null, finestPct: null};
		case 'bias-idle':
		case 'bias-off-scale':
		case 'bias-rubs':
		case 'bias-uneven':
		case 'playable-with-bias':
			return {code, kind: 'bias', who: 'technician', minutes: 10};
		case 'undecided':
			return decide(first.values.open, atWorst);
		case 'sound':
			return {code, kind: 'leave', who: 'owner', minutes: null, atWorst};
	}
}

const suspect = (code: FindingCode, remedy: RemedyId, figures: Figures): NextAction => {
	const {who, minutes} = remedyById[remedy];
	return {code, kind: 'suspect', who, minutes, remedy, foretold: foretoldBefore(remedy, figures)};
};

/** The first suspect that was not tried; the one that may be tried over again; undefined where only the maker is left. */
function nextSuspect(code: SuspectedCode, {figures, findings, tried, fits}: ActionCase): NextAction | undefined {
	const {order, end} = suspectsOf({code, codes: findings.map((one) => one.code), figures, fits});
	const next = order.find((id) => !tried.includes(id));
	if (next) return suspect(code, next, figures);
	return end === 'maker' ? undefined : suspect(code, end, figures);
}

/** What would probably decide the first figure that rounds can decide; where none can, it is taken as it is at worst. */
function decide(open: readonly OpenFigure[], atWorst: AtWorst): NextAction {
	const code = 'undecided';
	for (const {at, wanted} of open) {
		const {place, radiusMm} = at;
		if (wanted === 'agreement') return {code, kind: 'odd-round', who: 'technician', minutes: 3, place, radiusMm};
		const total = wanted === 'three-rounds' ? 3 : 'rounds' in wanted ? wanted.rounds : undefined;
		if (total !== undefined)
			return {code, kind: 'more-rounds', who: 'technician', minutes: minutesOfRounds, place, radiusMm, total};
	}
	return {code, kind: 'leave', who: 'technician', minutes: null, atWorst};
}

/** Suspects of the first finding that were not tried, in their order. */
export function openSuspects({figures, findings, tried, fits}: ActionCase): readonly RemedyId[] {
	const [first] = findings;
	if (!first || !isSuspected(first.code)) return [];
	const codes = findings.map(({code}) => code);
	return suspectsOf({code: first.code, codes, figures, fits}).order.filter((id) => !tried.includes(id));
}

/** For some rounds more at one radius. */
const minutesOfRounds = 5;
/** For the rounds that a series still lacks. */
const minutesToJudge = 10;
/** For a series at three radii. */
const minutesOfSeries = 25;

/** Whether readings allow to set the bias now: not while they tell nothing, or not of one and the same deck. */
export const allowsBias = (findings: readonly {readonly code: FindingCode}[]): boolean =>
	!findings.some(({code}) => code === 'off-scale' || code === 'moved');
