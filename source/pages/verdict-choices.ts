import type {Dialogue, Position} from '../check/dialogue.js';
import {type AskedPrompt, promptOf} from '../check/prompt.js';
import {choiceOf} from '../check/prompt-options.js';
import {type PromptOption, plainly} from '../check/says.js';
import {hasBias} from '../procedure/bias-devices.js';
import {usualRemedies} from '../procedure/remedies.js';
import type {PlaceName} from '../results/document-schema.js';
import {type ActionCase, allowsBias, type NextAction, nextActionOf, openSuspects} from '../results/next-action.js';
import {caseOfCheck} from '../results/tried.js';

/** How the next action is chosen. */
function actionOption(action: NextAction): PromptOption {
	switch (action.kind) {
		case 'suspect':
			return {id: choiceOf.remedy(action.remedy), label: {id: 'remedy', values: {remedy: action.remedy}}};
		case 'radius-between':
			return {id: 'radius-between', label: plainly('radius-between')};
		case 'more-rounds': {
			const place = placeOf(action.place);
			return {id: `more-${place}`, label: {id: 'more-rounds', values: {place}}};
		}
		case 'judge':
			return {id: 'judge', label: plainly('judge')};
		case 'odd-round':
			return {id: 'strike', label: plainly('strike')};
		case 'bias':
			return {id: 'bias', label: plainly('look-at-bias')};
		case 'maker':
			return {id: 'go-on', label: plainly('to-maker')};
		case 'leave':
			return {id: 'go-on', label: plainly('leave')};
	}
}

const placeOf = (place: PlaceName) => (place === 'other' ? 'extra' : place);

/**
 * What is asked: at the verdict the next action comes first, then to put the deck back, then another way; the other ways
 * are the suspects that are left, more rounds, a round struck out, and the bias where the readings allow to set it.
 */
export function promptInOrder(dialogue: Dialogue, position: Position): AskedPrompt {
	const prompt = promptOf(dialogue, position);
	const isAsked = dialogue.mode.kind === 'ask' && position.step?.input.kind === 'verdict';
	if (prompt.kind !== 'choice' || !(isAsked || dialogue.mode.kind === 'other-way')) return prompt;
	const given = caseOfCheck(dialogue.check);
	const action = given && nextActionOf(given);
	const first = action ? [actionOption(action)] : [];
	const isLeft = ({id}: PromptOption) => id !== first[0]?.id;
	const others = otherWays(prompt.options, given).filter(isLeft);
	if (!isAsked) return {...prompt, options: others};
	// A sound arm has no better thing to do than its bias, so that is a key nearer.
	const bias =
		action?.kind === 'leave' && hasBias(position.progress.facts) ? others.filter(({id}) => id === 'bias') : [];
	const always = (wanted: string) => prompt.options.filter(({id}) => id === wanted).filter(isLeft);
	return {...prompt, options: [...first, ...always('go-on'), ...bias, ...always('other-way')]};
}

function otherWays(options: readonly PromptOption[], given: ActionCase | undefined): readonly PromptOption[] {
	const order = [
		...(given && !allowsBias(given.findings) ? [] : ['bias']),
		...(given ? openSuspects(given) : []).map(choiceOf.remedy),
		'judge',
		'more-inner',
		'more-outer',
		'more-extra',
		'radius-between',
		'strike',
		...usualRemedies.map(choiceOf.remedy),
	];
	return [...new Set(order)].flatMap((wanted) => options.find(({id}) => id === wanted) ?? []);
}
