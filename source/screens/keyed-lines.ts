import type {Prompt} from '../check/prompt.js';

/** What a control that knows single keys says, line by line; the layout counts these lines, the control draws them. */
export function keyedLines(prompt: Prompt): readonly string[] {
	switch (prompt.kind) {
		case 'yes-no':
			return [`${prompt.question ?? ''} y / n`.trim()];
		case 'side':
			return prompt.options.map(({label, keys}) => `${keys.join(' or ')}  ${label}`);
		case 'still':
			return ['y  all still so', ...prompt.items.map((item, index) => `${index + 1}  no longer so: ${item}`)];
		case 'field':
		case 'choice':
		case 'none':
			return [];
	}
}
