import type {ProfileKind} from '../../../procedure/step-ids.js';
import {dayText} from '../../dates.js';
import {listed} from '../../numbers.js';
import {results} from '../results.js';

const renaming = {
	arm: 'Neuen Namen für denselben Arm eintippen. Frühere Prüfungen bleiben bei ihm. Einen anderen Arm in einer Prüfung eingeben.',
	cartridge:
		'Neuen Namen für denselben Tonabnehmer eintippen. Anderen Tonabnehmer oder neue Nadel in einer Prüfung eingeben.',
	tools:
		'Neuen Namen für denselben Werkzeugsatz eintippen. Anderes Werkzeug oder einen reparierten Kraftmesser nicht hier, sondern in einer Prüfung eingeben.',
} satisfies Record<ProfileKind, string>;

type Named = {readonly name: string};
/** A day, as yyyy-mm-dd. */
type Kept = {readonly on: string; readonly changedOn: string | undefined};

export const profiles = {
	title: 'Profile',
	gone: 'Dieses Profil gibt es nicht mehr.',
	none: 'Noch keine. Eine Prüfung legt sie beim Antworten an.',
	some: 'Eines wählen: ansehen, umbenennen, berichtigen, beiseitelegen.',
	inList: ({kind, name, isAside}: Named & {readonly kind: ProfileKind; readonly isAside: boolean}) =>
		`${results.kinds[kind]}: ${name}${isAside ? ' (beiseite)' : ''}`,
	kept: ({on, changedOn}: Kept) =>
		changedOn === undefined
			? `Gespeichert am ${dayText(on)}.`
			: `Gespeichert am ${dayText(on)}, hier geändert am ${dayText(changedOn)}.`,
	formerNames: ({names}: {readonly names: readonly string[]}) =>
		`Hieß früher ${listed(names.map((name) => `„${name}“`))}.`,
	aside: 'Beiseite: Prüfungen bieten es nicht an. Frühere Prüfungen bleiben.',
	rename: ({name}: Named) => `${name} umbenennen`,
	renaming,
	correct: ({name}: Named) => `${name} berichtigen`,
	correcting: 'Frühere Prüfungen behalten ihre alten Antworten.',
	takenOver: ({kind}: {readonly kind: ProfileKind}) =>
		`Die offene Prüfung behält ihre Antworten für diesen ${results.kinds[kind]}. Eine Änderung hier gilt für neue Prüfungen.`,
	actions: {
		rename: 'umbenennen',
		answers: 'Antwort berichtigen',
		events: 'was gemacht wurde',
		'set-aside': 'beiseitelegen: nicht mehr anbieten',
		'take-back': 'zurückholen: wieder anbieten',
		back: 'zurück zur Liste',
	},
	answer: ({title, text}: {readonly title: string; readonly text: string}) => `${title}: ${text}`,
	now: ({text}: {readonly text: string}) => `Jetzt: ${text}`,
	/** An answer as it was typed; undefined where there is none. */
	text: ({typed}: {readonly typed: string | undefined}) => {
		if (typed === undefined) return 'noch keine Antwort';
		return typed === '' ? 'nicht bekannt' : typed;
	},
};
