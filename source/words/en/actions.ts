import type {Foretold, SuspectOutcome} from '../../results/foretold.js';
import type {NextAction} from '../../results/next-action.js';
import {listed, mm, percent} from '../numbers.js';
import {forceWithWay} from './figures.js';
import {remedies} from './remedies.js';

/** Hands go to wires, linkage, pulley or bearing. */
const delicate = 'First lock the arm, guard on, amplifier off. Go only as far as its maker allows.';

const rounds = {
	one: 'two rounds at one radius show it',
	both: 'two rounds at each radius show it',
	closing: 'a whole probe shows it',
} as const;

/** Who does it, and how long it takes. */
const by = ({who, minutes}: Pick<NextAction, 'who' | 'minutes'>): string =>
	minutes === null ? who : `${who}, about ${minutes} min`;

type Suspect = Extract<NextAction, {kind: 'suspect'}>;
type Of = {readonly seenAt: keyof typeof rounds; readonly isDelicate: boolean};

const foretold = ({isSure, moves}: Foretold): string => {
	const at = listed(moves.map(({radiusMm, movePct}) => `${forceWithWay(movePct, '%', 1)} at ${mm(radiusMm)}`));
	return isSure ? `the pull should move by ${at}` : `if it is the cause, the pull moves by ${at}`;
};

/** How a suspect is looked at, and what the readings should do then: a sentence each. */
const how = ({remedy, foretold: moves}: Suspect, {seenAt}: Of): readonly string[] => {
	const {how: howTo} = remedies[remedy];
	const then = moves ? `${foretold(moves)}; ${rounds[seenAt]}` : rounds[seenAt];
	return [...(howTo === '' ? [] : [howTo]), `Then probe again: ${then}.`];
};

/** What is to be done now, without the full stop. */
const what = (action: NextAction): string => {
	const who = by(action);
	switch (action.kind) {
		case 'suspect':
			return `${remedies[action.remedy].name} (${who})`;
		case 'radius-between':
			return `take rounds at one more radius between (${who})`;
		case 'more-rounds':
			return `take more rounds at ${mm(action.radiusMm)}, ${action.total} in all (${who})`;
		case 'judge':
			return `take rounds up to three at each radius, then a closing one (${who})`;
		case 'odd-round':
			return `the rounds at ${mm(action.radiusMm)} do not agree: strike the odd one out, or take them again (${who})`;
		case 'bias':
			return `look at the bias device, set it and probe with it on (${who})`;
		case 'maker':
			return `send the arm to its maker, with the figures${
				action.finestPct === null
					? ''
					: `; until then bias can be set no finer than half the band, ± ${percent(action.finestPct, 1)}`
			}`;
		case 'leave':
			return action.atWorst === 'good' || action.atWorst === 'usable'
				? `put the deck back; nothing to repair (${who})`
				: `take it as ${action.atWorst} at worst: rounds will not decide it (${who})`;
	}
};

const band = (byPct: number): string => `the hold band ${byPct < 0 ? 'narrowed' : 'widened'} by`;

/** What a remedy did: foretold and seen, in one line. */
const outcome = (found: SuspectOutcome): string => {
	const {doing} = remedies[found.remedy];
	const at = mm(found.radiusMm);
	const seen = forceWithWay(found.seenPct, '%', 1);
	switch (found.kind) {
		case 'as-foretold':
			return `${doing} moved the pull by ${seen} at ${at}, as foretold.`;
		case 'something-else':
			return `${doing} should move the pull by ${forceWithWay(found.foretoldPct, '%', 1)} at ${at}; it moved ${seen}: something else moved.`;
		case 'cause':
			return `${doing} moved the pull by ${seen} at ${at}, as foretold (${forceWithWay(found.foretoldPct, '%', 1)}): here is the cause.`;
		case 'no-cause':
			return `${doing} should move the pull by ${forceWithWay(found.foretoldPct, '%', 1)} at ${at}; it moved ${seen}: not the cause.`;
		case 'in-part':
			return `${doing} moved the pull by ${seen} at ${at}, foretold were ${forceWithWay(found.foretoldPct, '%', 1)}: only a part of the cause, or something else moved.`;
		case 'cannot-tell':
			return `${doing} moved the pull by ${seen} at ${at}: too little to tell.`;
		case 'changed':
			return found.figure === 'pull'
				? `${doing} moved the pull by ${seen} at ${at}.`
				: `${doing}: ${band(found.seenPct)} ${percent(Math.abs(found.seenPct), 1)} at ${at}.`;
		case 'unchanged':
			return `${doing} changed nothing that can be told (${at}): not the cause.`;
	}
};

/** The one thing to do now: what, the caution where hands go to what is delicate, and how; and what a remedy did. */
export const actions = {what, delicate, how, outcome};
