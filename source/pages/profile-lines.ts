import type {Profile} from '../procedure/facts.js';
import {profileQuestions} from '../results/profile-answers.js';
import {words} from '../words/index.js';
import {says} from '../words/says.js';
import {listed} from '../words/wording.js';
import {unusualLengths} from './geometry-lines.js';
import {line, type Shown} from './shown-lines.js';

/** A profile with all its answers, in the order in which they are asked. */
export const profileLines = (profile: Profile): Shown[] => [
	line(`Kept on ${profile.usedAt.slice(0, 10)}${correctedText(profile)}.`),
	...(profile.formerNames?.length ? [line(`Called ${listed(profile.formerNames.map(quoted))} before.`)] : []),
	...(profile.setAside ? [line('Set aside: checks do not offer it. Its past checks stay.', 'warn')] : []),
	...profileProblems(profile).map((text) => line(text, 'warn')),
	...profileQuestions(profile).steps.flatMap(({id, title}) => {
		const answer = profile.answers[id];
		return answer ? [line(`${title}: ${answer.typed === '' ? 'not known' : answer.typed}`)] : [];
	}),
];

const quoted = (name: string): string => `"${name}"`;
const correctedText = ({correctedAt}: Profile): string =>
	correctedAt === undefined ? '' : `, changed here on ${correctedAt.slice(0, 10)}`;

/**
 * What does not pass in a profile, or has no answer yet; a check that takes it over asks for it. And lengths that a
 * check would not ask about but say to look at again.
 */
export function profileProblems(profile: Pick<Profile, 'kind' | 'answers'>): readonly string[] {
	const {facts, steps} = profileQuestions(profile);
	const problems = steps.flatMap((step) => {
		if (!facts.answered(step.id)) return [words.results.profileLacks(step)];
		const problem = step.verify?.(facts);
		return problem ? [`${step.title}: ${says.problem(problem)}`] : [];
	});
	const unusual = profile.kind === 'arm' ? unusualLengths(facts) : undefined;
	return unusual === undefined ? problems : [...problems, unusual];
}
