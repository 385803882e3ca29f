import type {Profile} from '../procedure/facts.js';
import {profileProblems, profileQuestions} from '../results/profile-answers.js';
import {titleOf} from '../words/step-text.js';
import {listed} from '../words/wording.js';
import {line, type Shown} from './shown-lines.js';

/** A profile with all its answers, in the order in which they are asked. */
export const profileLines = (profile: Profile): Shown[] => [
	line(`Kept on ${profile.usedAt.slice(0, 10)}${correctedText(profile)}.`),
	...(profile.formerNames?.length ? [line(`Called ${listed(profile.formerNames.map(quoted))} before.`)] : []),
	...(profile.setAside ? [line('Set aside: checks do not offer it. Its past checks stay.', 'warn')] : []),
	...profileProblems(profile).map((text) => line(text, 'warn')),
	...profileQuestions(profile).steps.flatMap(({id}) => {
		const answer = profile.answers[id];
		return answer ? [line(`${titleOf(id)}: ${answer.typed === '' ? 'not known' : answer.typed}`)] : [];
	}),
];

const quoted = (name: string): string => `"${name}"`;
const correctedText = ({correctedAt}: Profile): string =>
	correctedAt === undefined ? '' : `, changed here on ${correctedAt.slice(0, 10)}`;
