import type {Answer} from '../../check/check.js';
import {progressOf, type StepState} from '../../check/progress.js';
import {isDeckReady, outcomeText} from '../../pages/record-lines.js';
import {reportWords} from '../../words/reports.js';
import {reasonText} from '../../words/says.js';
import {titleOf} from '../../words/step-text.js';
import type {CheckSource} from '../check-source.js';
import {around, type Section, sentenceBlock, type TableCell, typed} from '../report.js';

const {captions, cautions, deck, sections} = reportWords;

/** What became of the deck: the put-back list, line by line. */
export function deckPart({record, putBackAt}: CheckSource): Section {
	const {check} = record;
	const {visible, stateOf} = progressOf(check);
	const facts = visible
		.filter(({stage}) => stage === 'back')
		.map((step): readonly [string, TableCell] => [titleOf(step.id), stateText(stateOf(step), check.answers[step.id])]);
	const isReady = isDeckReady(record, putBackAt);
	return {
		title: sections.deck,
		blocks: [
			isReady ? sentenceBlock(deck.ready) : sentenceBlock(deck.notReady, 'bad'),
			sentenceBlock(deck.ended({outcome: outcomeText(record, putBackAt)})),
			{kind: 'facts', caption: captions.putBack, facts},
		],
	};
}

function stateText(state: StepState, answer: Answer | undefined): TableCell {
	if (!answer || (state !== 'overridden' && state !== 'done')) return deck.notDone;
	if (state === 'overridden')
		return around(answer.override ? reasonText(answer.override.reason) : '', (reason) =>
			deck.leftSo({reason, answer: answer.typed}),
		);
	return answer.value === true ? deck.done : typed(answer.typed);
}

export const cautionsPart: Section = {title: sections.cautions, blocks: [{kind: 'list', items: cautions}]};
