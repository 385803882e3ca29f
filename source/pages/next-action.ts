import {remedyById} from '../procedure/remedies.js';
import type {FindingCode} from '../results/diagnose.js';
import type {IssuedFinding} from '../results/issued.js';
import type {NextAction} from '../results/next-action.js';
import {briefly} from '../words/finding-text.js';
import {words} from '../words/index.js';
import {inWords, line, type Shown, unheard} from './shown-lines.js';

const {actions} = words;
const {verdict} = words.pages;

/** The caution and the way of an action: what stands under it. */
function underAction(action: NextAction): Shown[] {
	if (action.kind === 'bias') return [line(actions.delicate.locked, 'warn')];
	if (action.kind !== 'suspect') return [];
	const {seenAt, delicateWith} = remedyById[action.remedy];
	const how = actions.how(action, {seenAt}).map((one) => line(one));
	return delicateWith ? [line(actions.delicate[delicateWith], 'warn'), ...how] : how;
}

/** All that is said of an action, without its last full stop. */
const actionText = (action: NextAction): string =>
	[`${actions.what(action)}.`, ...underAction(action).map(inWords)].join(' ').replace(/\.$/, '');

/** Findings as they are issued: the first one has the one action, the others have none. */
export const withAction = (findings: readonly IssuedFinding[], action: NextAction | undefined): IssuedFinding[] =>
	findings.map((one, index) =>
		index === 0 && action ? {...one, who: action.who, next: actionText(action)} : {...one, next: ''},
	);

/**
 * What the arm does, and the one thing to do now: those of the gravest finding.
 *
 * @param action what is to be done now; none in a check on file, which tells what came next as it was issued
 */
export function actionLines([first]: readonly IssuedFinding[], action: NextAction | undefined): Shown[] {
	if (!first) return [];
	if (action) return doNowLines(action);
	return first.code === 'sound' ? [] : [line(verdict.next(first))];
}

/** The one thing to do now, and how. */
export const doNowLines = (action: NextAction): Shown[] => [
	line(verdict.doNow({what: actions.what(action)}), 'strong'),
	...underAction(action),
];

/** Findings whose figures are those of the table of radii: of them a voice tells only what the arm does. */
const toldByTable: ReadonlySet<FindingCode> = new Set([
	'pull-and-friction',
	'constant-pull',
	'spring-pull',
	'runaway-pull',
	'friction',
	'friction-local',
	'no-pattern',
	'undecided',
	'sound',
]);

/** What was found in figures and its likely cause; and the other findings, without an action of their own. */
export const besideAction = ([first, ...others]: readonly IssuedFinding[]): Shown[] => [
	...(first && first.code !== 'sound'
		? [toldByTable.has(first.code) ? unheard(line(first.found)) : line(first.found)]
		: []),
	...(first && first.likely !== '' ? [line(verdict.likely(first))] : []),
	...others.map((one) => ({
		...line(verdict.alsoSeen(one)),
		...(toldByTable.has(one.code) ? {heard: verdict.alsoSeen({found: briefly(one)})} : {}),
	})),
];
