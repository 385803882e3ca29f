import {type Facts, factsOf, type Profile} from '../procedure/facts.js';
import {procedure} from '../procedure/index.js';
import {fits, readAnswer} from '../procedure/read-answer.js';
import {limitsOf, usualSettings} from '../procedure/settings.js';
import type {Step} from '../procedure/step.js';

export type ProfileAnswers = Profile['answers'];

type Questions = {
	/** What the answers of the profile say to its steps. */
	readonly facts: Facts;
	/** The questions that apply, in the order in which they are asked, answered or not. */
	readonly steps: readonly Step[];
};

/** No question of a profile depends on the limits of the verdict. */
const limits = limitsOf(usualSettings);

/** A cartridge's questions are its arm's today; a profile of one that an earlier version kept has those it answers. */
const belongs = ({id, profile}: Step, kind: Profile['kind'], answers: ProfileAnswers): boolean =>
	profile === kind || (kind === 'cartridge' && profile === 'arm' && id in answers);

/** The questions of a profile; one that others make needless does not count, though it may still have an answer. */
export function profileQuestions({kind, answers}: Pick<Profile, 'kind' | 'answers'>): Questions {
	const visible: Record<string, ProfileAnswers[string]> = {};
	const facts = factsOf({answers: visible, onFile: answers, limits});
	const steps = procedure.filter((step) => {
		if (!belongs(step, kind, answers) || !(step.when?.(facts) ?? true)) return false;
		const answer = answers[step.id];
		if (answer && fits(step.input, answer.value)) visible[step.id] = answer;
		return true;
	});
	return {facts, steps};
}

/**
 * The answers of a profile after some of them changed: what became needless goes, and so does what was typed under
 * another unit and is no answer any more.
 */
export function answersAfter(
	kind: Profile['kind'],
	answers: ProfileAnswers,
	changed: readonly string[],
): ProfileAnswers {
	const {facts, steps} = profileQuestions({kind, answers});
	const touched = new Set<string>(steps.filter(({id}) => changed.includes(id)).flatMap(({touches = []}) => touches));
	const isLost = (step: Step, {typed}: ProfileAnswers[string]): boolean =>
		touched.has(step.id) &&
		!changed.includes(step.id) &&
		step.input.kind !== 'choice' &&
		readAnswer(step, typed, facts).kind === 'refused';
	const asked = new Set<string>(procedure.filter((step) => belongs(step, kind, answers)).map(({id}) => id));
	const foreign = Object.entries(answers).filter(([id]) => !asked.has(id));
	const kept = steps.flatMap((step) => {
		const answer = answers[step.id];
		return answer && !isLost(step, answer) ? [[step.id, answer] as const] : [];
	});
	return Object.fromEntries([...kept, ...foreign]);
}
