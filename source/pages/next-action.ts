import {remedyById} from '../procedure/remedies.js';
import type {IssuedFinding} from '../results/issued.js';
import type {NextAction} from '../results/next-action.js';
import {words} from '../words/index.js';
import {line, type Shown} from './shown-lines.js';

const {verdict} = words.pages;

/** What is to be done now, without its full stop. */
export function actionText(action: NextAction): string {
	const {seenAt, isDelicate = false} = remedyById[action.kind === 'suspect' ? action.remedy : 'again'];
	return words.actions.todo(action, {seenAt, isDelicate});
}

/** Findings as they are issued: the first one has the one action, the others have none. */
export const withAction = (findings: readonly IssuedFinding[], action: NextAction | undefined): IssuedFinding[] =>
	findings.map((one, index) =>
		index === 0 && action ? {...one, who: action.who, next: actionText(action)} : {...one, next: ''},
	);

/** What the arm does, and the one thing to do now: those of the gravest finding. */
export const actionLines = ([first]: readonly IssuedFinding[]): Shown[] =>
	first ? [line(first.found), line(verdict.next(first), 'strong')] : [];

/** The likely cause, and the other findings, without an action of their own. */
export const besideAction = ([first, ...others]: readonly IssuedFinding[]): Shown[] => [
	...(first && first.likely !== '' ? [line(verdict.likely(first))] : []),
	...others.map((one) => line(verdict.alsoSeen(one))),
];
