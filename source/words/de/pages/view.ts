import type {Excused, Mode} from '../../../check/dialogue.js';

type Detour = Exclude<Mode['kind'], 'ask' | 'side' | 'reason' | 'reason-typed'>;

/** What stands around a question of a check, and the detours from it. */
export const view = {
	arm: ({name = 'neuer Arm', isPractice}: {name: string | undefined; isPractice: boolean}) =>
		isPractice ? `ÜBUNG: ${name}` : name,
	stage: ({title, number, of}: {title: string; number: number; of: number}) => `${title} (${number}/${of})`,
	/** With the round, where rounds are taken. */
	titled: ({title, round}: {title: string; round: {number: number; usual: number; isTurned: boolean} | undefined}) =>
		round === undefined || round.usual === 1
			? title
			: `${title}, Runde ${round.number} von ${Math.max(round.usual, round.number)}`,
	place: ({number, of}: {number: number; of: number}) => `${number}/${of}`,
	minutes: ({minutes, isShort}: {minutes: number; isShort: boolean}) => `${isShort ? '' : 'etwa '}${minutes} min`,
	complete: {stage: 'Fertig', title: 'Die Prüfung ist fertig', ask: 'Die Prüfung ist fertig.'},
	readyToPlay: 'spielbereit',
	notReadyToPlay: 'NICHT SPIELBEREIT',
	/** Where there is no room for more. */
	notReady: 'UNFERTIG',
	sheetLineAsked: ({title}: {title: string}) => `${title}: ?`,
	sheetLine: ({title, typed}: {title: string; typed: string | undefined}) =>
		typed === undefined ? `${title}:` : `${title}: ${typed === '' ? '-' : typed}`,
	side: {
		title: ({title}: {title: string}) => `${title}: welche Seite?`,
		ask: ({typed}: {typed: string}) => `Eingetippt wurde „${typed}“. Welche Seite ist gemeint?`,
	},
	reason: {
		override: {
			title: 'Warum weiter?',
			ask: 'Grund angeben. Er bleibt beim Urteil gespeichert.',
		},
		strike: {
			title: 'Warum gestrichen?',
			ask: 'Grund angeben. Die Runde bleibt gespeichert, zählt aber nicht mehr.',
		},
	} satisfies Record<Excused['kind'], unknown>,
	titles: {
		ways: 'Was tun?',
		strike: 'Welche Runde streichen?',
		'other-way': 'Anderer Weg',
		steps: 'Alle Schritte',
		stop: 'Hier aufhören?',
	} satisfies Record<Detour, string>,
	asks: {
		strike: 'Sie bleibt gespeichert, zählt aber nicht mehr.',
		'other-way': 'Eine Änderung am Laufwerk oder Arm beginnt eine neue Messreihe. Die bisherigen Runden bleiben.',
		steps: 'Nummer eines Schritts eintippen. ✓ erledigt, ? nachsehen, ✗ genügt nicht, ~ übergangen.',
		stop: 'Nach dem Aufhören wird das Laufwerk spielbereit gemacht. Tab führt von dort zurück zur Prüfung. Hier aufhören?',
	} satisfies Record<Exclude<Detour, 'ways'>, string>,
};
