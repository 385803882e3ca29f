import type {Answer} from '../../check/check.js';
import {progressOf, type StepState} from '../../check/progress.js';
import {isDeckReady, outcomeText} from '../../pages/record-lines.js';
import {reasonText} from '../../words/says.js';
import type {CheckSource} from '../check-source.js';
import {type Cell, type Section, sentence, typed} from '../report.js';

/** What became of the deck: the put-back list, line by line. */
export function deckPart({record, putBackAt}: CheckSource): Section {
	const {check} = record;
	const {visible, stateOf} = progressOf(check);
	const rows = visible
		.filter(({stage}) => stage === 'back')
		.map((step): readonly [string, Cell] => [step.title, stateText(stateOf(step), check.answers[step.id])]);
	const ready = isDeckReady(record, putBackAt);
	return {
		title: 'Deck',
		blocks: [
			sentence(
				ready ? 'The deck was put back and is ready to play.' : 'The deck is not ready to play.',
				ready ? 'plain' : 'bad',
			),
			sentence(`The check ended so: ${outcomeText(record, putBackAt)}.`),
			{kind: 'facts', caption: 'Put-back list', facts: rows},
		],
	};
}

function stateText(state: StepState, answer: Answer | undefined): Cell {
	if (!answer || state === 'open') return 'not done';
	if (state === 'overridden')
		return [
			'left so: ',
			typed(answer.override ? reasonText(answer.override.reason) : ''),
			` (answered: ${answer.typed})`,
		];
	if (state !== 'done') return 'not done';
	return answer.value === true ? 'done' : typed(answer.typed);
}
