import type {Profile} from '../procedure/facts.js';
import {procedure} from '../procedure/index.js';
import {line, type Shown} from './shown-lines.js';

/** A profile with all its answers, in the order in which they are asked. */
export const profileLines = ({kind, answers, usedAt}: Profile): Shown[] => [
	line(`Kept on ${usedAt.slice(0, 10)}.`),
	...procedure
		.filter((step) => step.profile === kind)
		.flatMap(({id, title}) => {
			const answer = answers[id];
			return answer ? [line(`${title}: ${answer.typed === '' ? 'not known' : answer.typed}`)] : [];
		}),
];
