import {dayText} from '../../dates.js';

/** Something done to an arm, with its day, as yyyy-mm-dd. */
type Told = {readonly on: string; readonly what: string; readonly struckOn: string | undefined};

/** What was done to an arm, beside its checks. */
export const events = {
	title: ({name}: {readonly name: string}) => `What was done to ${name}`,
	none: 'Nothing is noted yet. A re-check asks; what was done can be noted here on any day.',
	inList: ({on, what, struckOn, isNoted}: Told & {readonly isNoted: boolean}) =>
		`${dayText(on)}: ${what}${isNoted ? '' : ' (told at the check)'}${struckOn === undefined ? '' : ` (struck out on ${dayText(struckOn)})`}`,
	event: ({on, what}: Told) => `${dayText(on)}: ${what}`,
	add: 'note something that was done',
	strike: ({on, what}: Told) => `strike out: ${dayText(on)}, ${what}`,
	kind: 'What was done?',
	note: 'What was done? A few words.',
	day: ({what}: {readonly what: string}) => `On which day, such as 2026-11-25? (${what})`,
	whatStrikingMeans: 'It stays here as struck out. Comparisons and the trend leave it out.',
	question: 'Strike it out?',
};
