import type {Profile} from '../../procedure/facts.js';
import {profileQuestions} from '../../results/profile-answers.js';
import {words} from '../../words/index.js';
import {says} from '../../words/says.js';
import {titleOf} from '../../words/step-text.js';
import {answerInWords} from '../answer-text.js';
import {unusualLengths} from '../geometry-lines.js';
import {line, type Shown} from '../shown-lines.js';
import {warnings} from './page.js';

const say = words.beside.profiles;

export function answerText(profile: Profile, id: string): string {
	const answer = profile.answers[id];
	return say.text({typed: answer && answerInWords(id, answer, profileQuestions(profile).facts)});
}

/** A question of a profile with its answer. */
export const answerLine = (profile: Profile, id: string): string =>
	say.answer({title: titleOf(id), text: answerText(profile, id)});

/** A profile with all its answers, in the order in which they are asked. */
export const profileLines = (profile: Profile): Shown[] => [
	line(say.kept({on: profile.usedAt.slice(0, 10), changedOn: profile.correctedAt?.slice(0, 10)})),
	...(profile.formerNames?.length ? [line(say.formerNames({names: profile.formerNames}))] : []),
	...(profile.setAside ? [line(say.aside, 'warn')] : []),
	...warnings(profileProblems(profile)),
	...profileQuestions(profile).steps.flatMap(({id}) => (profile.answers[id] ? [line(answerLine(profile, id))] : [])),
];

/**
 * What does not pass in a profile, or has no answer yet; a check that takes it over asks for it. And lengths that a
 * check would not ask about but say to look at again.
 */
export function profileProblems(profile: Pick<Profile, 'kind' | 'answers'>): readonly string[] {
	const {facts, steps} = profileQuestions(profile);
	const problems = steps.flatMap((step) => {
		if (!facts.answered(step.id)) return [words.results.profileLacks({title: titleOf(step.id)})];
		const problem = step.verify?.(facts);
		return problem ? [say.answer({title: titleOf(step.id), text: says.problem(problem)})] : [];
	});
	const unusual = profile.kind === 'arm' ? unusualLengths(facts) : undefined;
	return unusual === undefined ? problems : [...problems, unusual];
}
