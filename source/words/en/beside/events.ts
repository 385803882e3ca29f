import {dayText} from '../../dates.js';

/** Something done to an arm, with its day, as yyyy-mm-dd. */
type Told = {readonly on: string; readonly what: string; readonly struckOn: string | undefined};

/** What was done to an arm, beside its checks. */
export const events = {
	title: ({name}: {readonly name: string}) => `What was done to ${name}`,
	none: 'Nothing noted yet. Note here what was done, and when. A re-check asks too.',
	inList: ({on, what, struckOn, isNoted}: Told & {readonly isNoted: boolean}) =>
		`${dayText(on)}: ${what}${isNoted ? '' : ' (told at the check)'}${struckOn === undefined ? '' : ` (struck out on ${dayText(struckOn)})`}`,
	event: ({on, what}: Told) => `${dayText(on)}: ${what}`,
	add: 'note something that was done',
	strike: ({on, what}: Told) => `strike out: ${dayText(on)}, ${what}`,
	kind: 'What was done?',
	note: 'Type what was done, in a few words.',
	day: ({what}: {readonly what: string}) => `On which day? Type it like 2026-11-25. (${what})`,
	whatStrikingMeans: 'It stays here, struck out. Comparisons and trend leave it out.',
	question: 'Strike it out?',
};
