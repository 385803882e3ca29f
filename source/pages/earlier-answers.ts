import type {Dialogue} from '../check/dialogue.js';
import {stillItems} from '../check/prompt-options.js';
import type {Facts} from '../procedure/facts.js';
import type {Step} from '../procedure/step.js';
import {titleOf} from '../words/step-text.js';
import {unusualLengths} from './geometry-lines.js';
import {line, type Shown} from './shown-lines.js';

/** What was answered before, beside the question whether it is still so; what a profile says otherwise by now, first. */
export function earlierAnswers(dialogue: Dialogue, step: Step, facts: Facts): Shown[] {
	const {check} = dialogue;
	const then = (step.id === 'still-last-time' && check.changedSince) || {};
	const isResized = 'arm-length' in then || 'arm-pivot-distance' in then;
	const unusual = isResized ? unusualLengths(facts) : undefined;
	return [...(unusual === undefined ? [] : [line(unusual, 'warn')]), ...answersOf(dialogue, step, then)];
}

function answersOf(dialogue: Dialogue, step: Step, then: Readonly<Record<string, string>>): Shown[] {
	const {check} = dialogue;
	return stillItems(dialogue, step).flatMap(({steps, shows = steps}) =>
		[...steps.filter((id) => id in then), ...shows.filter((id) => !(id in then))].flatMap((id) => {
			const answer = check.answers[id];
			if (!answer) return [];
			const since = then[id];
			if (since !== undefined)
				return [
					line(
						`${titleOf(id)}: ${known(answer.typed)}, corrected in its profile since the last check (${known(since)} then)`,
						'warn',
					),
				];
			return answer.typed === '' ? [] : [line(`${titleOf(id)}: ${answer.typed}`)];
		}),
	);
}

const known = (typed: string): string => (typed === '' ? 'not known' : typed);
