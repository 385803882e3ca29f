import type {Foretold, SuspectOutcome} from '../../results/foretold.js';
import type {NextAction} from '../../results/next-action.js';
import {listed, mm, percent, printsAsZero} from '../numbers.js';
import {verdictName} from './figures.js';
import {remedies} from './remedies.js';

/** Hands go to wires, linkage, pulley or bearing; 'free' where the arm itself must be moved. */
const delicate = {
	locked: "First lock the arm, guard on, amplifier off. Do only what the arm's maker allows.",
	free: "First put the guard on, amplifier off. Do only what the arm's maker allows.",
};

const rounds = {
	one: 'two rounds at one radius',
	both: 'two rounds at each radius',
	closing: 'the whole probe',
} as const;

const people = {technician: 'technician', owner: 'owner', maker: 'maker'} as const satisfies Record<
	NextAction['who'],
	string
>;

/** Who does it, and how long it takes. */
const by = ({who, minutes}: Pick<NextAction, 'who' | 'minutes'>): string =>
	minutes === null ? people[who] : `${people[who]}, about ${minutes} min`;

type Suspect = Extract<NextAction, {kind: 'suspect'}>;
type Of = {readonly seenAt: keyof typeof rounds};

/** How far a pull moves, '4.6 % inward'; one that prints as zero has no way. */
const moved = (byPct: number): string => {
	const size = percent(Math.abs(byPct), 1);
	return printsAsZero(byPct, 1) ? size : `${size} ${byPct < 0 ? 'inward' : 'outward'}`;
};

const foretold = ({isSure, moves}: Foretold, doing: string): string => {
	const at = listed(moves.map(({radiusMm, movePct}) => `${moved(movePct)} at ${mm(radiusMm)}`));
	return isSure
		? `The pull should move ${at}.`
		: `If ${doing.charAt(0).toLowerCase()}${doing.slice(1)} helps, the pull moves ${at}.`;
};

/** How a suspect is looked at, and what the readings should do then: a sentence each. */
const how = ({remedy, foretold: moves}: Suspect, {seenAt}: Of): readonly string[] => {
	const {how: howTo, doing} = remedies[remedy];
	return [
		...(howTo === '' ? [] : [howTo]),
		`Then probe again: ${rounds[seenAt]}.`,
		...(moves ? [foretold(moves, doing)] : []),
	];
};

/** What is to be done now, without the full stop. */
const what = (action: NextAction): string => {
	const who = by(action);
	switch (action.kind) {
		case 'suspect':
			return `${remedies[action.remedy].name} (${who})`;
		case 'radius-between':
			return `take rounds at one more radius, between the two (${who})`;
		case 'more-rounds':
			return `take more rounds at ${mm(action.radiusMm)}, ${action.total} in all (${who})`;
		case 'judge':
			return `take three rounds at each radius, then the closing round (${who})`;
		case 'odd-round':
			return `strike the odd round at ${mm(action.radiusMm)} out, or take the rounds there again (${who})`;
		case 'bias':
			return `set the bias device, then probe with bias on (${who})`;
		case 'maker':
			return `send the arm to its maker, with the figures${
				action.finestPct === null ? '' : `. Until then set the bias no finer than ± ${percent(action.finestPct, 1)}`
			}`;
		case 'leave':
			return action.atWorst === 'good' || action.atWorst === 'usable'
				? `put the deck back (${who}). Nothing needs repair`
				: `treat it as ${verdictName[action.atWorst]} (${who}). More rounds will not decide it`;
	}
};

const band = (byPct: number): string => `the friction ${byPct < 0 ? 'fell' : 'grew'} by`;

/** What a remedy did: foretold and seen, in one line. */
const outcome = (found: SuspectOutcome): string => {
	const {doing} = remedies[found.remedy];
	const at = mm(found.radiusMm);
	const seen = moved(found.seenPct);
	switch (found.kind) {
		case 'as-foretold':
			return printsAsZero(found.seenPct, 1)
				? `${doing} left the pull at ${at} the same, as predicted.`
				: `${doing} moved the pull ${seen} at ${at}, as expected.`;
		case 'something-else':
			return `${doing} moved the pull ${seen} at ${at}, expected ${moved(found.foretoldPct)}: something else moved.`;
		case 'cause':
			return `${doing} moved the pull ${seen} at ${at}, expected ${moved(found.foretoldPct)}: this is the cause.`;
		case 'no-cause':
			return `${doing} moved the pull ${seen} at ${at}, expected ${moved(found.foretoldPct)}: not the cause.`;
		case 'in-part':
			return `${doing} moved the pull ${seen} at ${at}, expected ${moved(found.foretoldPct)}: only part of the cause, or something else moved.`;
		case 'cannot-tell':
			return `${doing} moved the pull ${seen} at ${at}: too little to tell.`;
		case 'changed':
			return found.figure === 'pull'
				? `${doing} moved the pull ${seen} at ${at}.`
				: `${doing}: ${band(found.seenPct)} ${percent(Math.abs(found.seenPct), 1)} at ${at}.`;
		case 'unchanged':
			return `${doing} changed nothing: look for another cause.`;
	}
};

/** The one thing to do now: what, the caution where hands go to what is delicate, and how; and what a remedy did. */
export const actions = {what, delicate, how, outcome};
