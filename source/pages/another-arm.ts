import {words} from '../words/index.js';
import type {View} from './view.js';

/** The line that leads from the hidden truth of an invented arm to the other arms. */
export const anotherArm = 'another-arm';

/** Once the hidden truth stands at the verdict, another arm is the first line; what the verdict offers comes after it. */
export function beforeAnotherArm(view: View): View {
	const {prompt} = view;
	if (prompt.kind !== 'choice') return view;
	const options = [{id: anotherArm, label: words.beside.practice.filed.again}, ...prompt.options];
	return {
		...view,
		prompt: {...prompt, key: `${prompt.key}-${anotherArm}`, options, initial: anotherArm, offersFirst: true},
	};
}
