import type {Foretold, SuspectOutcome} from '../../results/foretold.js';
import type {NextAction} from '../../results/next-action.js';
import {listed, mm, percent, printsAsZero} from '../numbers.js';
import {forceWithWay, verdictName} from './figures.js';
import {remedies} from './remedies.js';

/** Hands go to wires, linkage, pulley or bearing; 'free' where the arm itself must be moved. */
const delicate = {
	locked: 'Vorher Arm verriegeln, Nadelschutz drauf, Verstärker aus. Nur tun, was der Hersteller des Arms erlaubt.',
	free: 'Vorher Nadelschutz drauf, Verstärker aus. Nur tun, was der Hersteller des Arms erlaubt.',
};

const rounds = {
	one: 'zwei Runden an einem Radius',
	both: 'zwei Runden an jedem Radius',
	closing: 'alle Runden',
} as const;

const people = {technician: 'Techniker', owner: 'Besitzer', maker: 'Hersteller'} as const satisfies Record<
	NextAction['who'],
	string
>;

/** Who does it, and how long it takes. */
const by = ({who, minutes}: Pick<NextAction, 'who' | 'minutes'>): string =>
	minutes === null ? people[who] : `${people[who]}, etwa ${minutes} min`;

type Suspect = Extract<NextAction, {kind: 'suspect'}>;
type Of = {readonly seenAt: keyof typeof rounds};

const foretold = ({isSure, moves}: Foretold, remedy: string): string => {
	const at = listed(moves.map(({radiusMm, movePct}) => `bei ${mm(radiusMm)} um ${forceWithWay(movePct, '%', 1)}`));
	return isSure ? `Der Zug sollte ${at} wandern.` : `Wenn „${remedy}“ hilft, wandert der Zug ${at}.`;
};

/** How a suspect is looked at, and what the readings should do then: a sentence each. */
const how = ({remedy, foretold: moves}: Suspect, {seenAt}: Of): readonly string[] => {
	const {how: howTo, name} = remedies[remedy];
	return [
		...(howTo === '' ? [] : [howTo]),
		`Dann neu messen: ${rounds[seenAt]}.`,
		...(moves ? [foretold(moves, name)] : []),
	];
};

/** What is to be done now, without the full stop. */
const what = (action: NextAction): string => {
	const who = by(action);
	switch (action.kind) {
		case 'suspect':
			return `${remedies[action.remedy].name} (${who})`;
		case 'radius-between':
			return `Runden an einem weiteren Radius messen, zwischen den beiden (${who})`;
		case 'more-rounds':
			return `bei ${mm(action.radiusMm)} weitere Runden messen, insgesamt ${action.total} (${who})`;
		case 'judge':
			return `drei Runden an jedem Radius messen, dann die Schlussrunde (${who})`;
		case 'odd-round':
			return `die abweichende Runde bei ${mm(action.radiusMm)} streichen, oder dort neu messen (${who})`;
		case 'bias':
			return `Antiskating einstellen, dann damit messen (${who})`;
		case 'maker':
			return `Arm mit den Messwerten zum Hersteller schicken${
				action.finestPct === null
					? ''
					: `. Bis dahin das Antiskating nicht feiner als ± ${percent(action.finestPct, 1)} einstellen`
			}`;
		case 'leave':
			return action.atWorst === 'good' || action.atWorst === 'usable'
				? `Laufwerk spielbereit machen (${who}). Nichts muss repariert werden`
				: `als „${verdictName[action.atWorst]}“ werten (${who}). Weitere Runden entscheiden es nicht`;
	}
};

/** What a remedy did: foretold and seen, in one line. */
const outcome = (found: SuspectOutcome): string => {
	const {doing} = remedies[found.remedy];
	const at = mm(found.radiusMm);
	const moved = `${doing}: Zug bei ${at} um ${forceWithWay(found.seenPct, '%', 1)} gewandert`;
	switch (found.kind) {
		case 'as-foretold':
			return printsAsZero(found.seenPct, 1)
				? `${doing}: Der Zug bei ${at} blieb gleich, wie vorausgesagt.`
				: `${moved}, wie erwartet.`;
		case 'something-else':
			return `${moved}, erwartet ${forceWithWay(found.foretoldPct, '%', 1)}: Etwas anderes hat sich verschoben.`;
		case 'cause':
			return `${moved}, erwartet ${forceWithWay(found.foretoldPct, '%', 1)}: Das ist die Ursache.`;
		case 'no-cause':
			return `${moved}, erwartet ${forceWithWay(found.foretoldPct, '%', 1)}: nicht die Ursache.`;
		case 'in-part':
			return `${moved}, erwartet ${forceWithWay(found.foretoldPct, '%', 1)}: nur ein Teil der Ursache, oder etwas anderes hat sich verschoben.`;
		case 'cannot-tell':
			return `${moved}: zu wenig, um es zu sagen.`;
		case 'changed':
			return found.figure === 'pull'
				? `${moved}.`
				: `${doing}: Reibung bei ${at} um ${percent(Math.abs(found.seenPct), 1)} ${found.seenPct < 0 ? 'gefallen' : 'gestiegen'}.`;
		case 'unchanged':
			return `${doing}: Das änderte nichts. Es gibt eine andere Ursache.`;
	}
};

/** The one thing to do now: what, the caution where hands go to what is delicate, and how; and what a remedy did. */
export const actions = {what, delicate, how, outcome};
