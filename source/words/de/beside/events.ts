import {dayText} from '../../dates.js';

/** Something done to an arm, with its day, as yyyy-mm-dd. */
type Told = {readonly on: string; readonly what: string; readonly struckOn: string | undefined};

/** What was done to an arm, beside its checks. */
export const events = {
	title: ({name}: {readonly name: string}) => `Gemacht an ${name}`,
	none: 'Noch nichts notiert. Hier notieren, was wann gemacht wurde. Eine Nachprüfung fragt auch.',
	inList: ({on, what, struckOn, isNoted}: Told & {readonly isNoted: boolean}) =>
		`${dayText(on)}: ${what}${isNoted ? '' : ' (bei der Prüfung gesagt)'}${struckOn === undefined ? '' : ` (gestrichen am ${dayText(struckOn)})`}`,
	event: ({on, what}: Told) => `${dayText(on)}: ${what}`,
	add: 'notieren, was gemacht wurde',
	strike: ({on, what}: Told) => `streichen: ${dayText(on)}, ${what}`,
	kind: 'Was wurde gemacht?',
	note: 'Kurz eintippen, was gemacht wurde.',
	day: ({what}: {readonly what: string}) => `An welchem Tag? Eintippen wie 2026-11-25. (${what})`,
	whatStrikingMeans: 'Es bleibt hier stehen, gestrichen. Vergleiche und Trend lassen es weg.',
	question: 'Streichen?',
};
