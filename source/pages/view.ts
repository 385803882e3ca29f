import {deckOf, movesBefore} from '../check/deck-state.js';
import {type Dialogue, type Position, positionOf, ticksAtOnce} from '../check/dialogue.js';
import {isReadyToPlay, stageCount} from '../check/progress.js';
import type {Prompt} from '../check/prompt.js';
import {respond} from '../check/respond.js';
import type {Deck} from '../procedure/deck.js';
import {unitOf} from '../procedure/read-answer.js';
import {gaugeUnitOf} from '../procedure/readings.js';
import {type Step, takes} from '../procedure/step.js';
import {caseOfCheck} from '../results/tried.js';
import {words} from '../words/index.js';
import {unitText} from '../words/numbers.js';
import {promptInWords, says} from '../words/says.js';
import {cautionOf, mistakeOf, whyOf} from '../words/step-text.js';
import {biasLater} from './bias/advice.js';
import {consequencesOf} from './consequences.js';
import {changedBy, isArmInHand, whileAsked} from './deck-changes.js';
import {type FigureAsked, figureAsked} from './figure-asked.js';
import {sheetOf} from './sheet-lines.js';
import {line, type Shown, type Tone} from './shown-lines.js';
import {headOf, isFirstLook, problemText, taskOf} from './task.js';
import {minutesLeft} from './time-left.js';
import {promptInOrder} from './verdict-choices.js';

const said = words.pages.view;

/** Everything that a face draws for one question. */
export type View = {
	readonly arm: string;
	readonly stage: string;
	/** Where this is in the whole, whose number of parts does not change: '5/15'; empty at the end. */
	readonly place: string;
	/** Until the deck is ready to play again; null at the end. */
	readonly minutes: number | null;
	readonly deck: Deck;
	/** The arm is moved in this step, and put back. */
	readonly isArmInHand: boolean;
	/** The parts of the deck that this step changes. */
	readonly changes: readonly (keyof Deck)[];
	/** Whether it is ready to play. */
	readonly progress: string;
	readonly title: string;
	readonly ask: string;
	/** How it is meant: a verdict tells what it came to where other screens say what to do. */
	readonly askTone: Tone;
	/** The lines of the page that the question belongs to: what was answered, and what is still to come. */
	readonly sheet: readonly Shown[];
	readonly shown: readonly Shown[];
	/** Why the last entry was not taken. */
	readonly refusal: string | undefined;
	/** What stands in large digits while a number is read off at the bench. */
	readonly figure: FigureAsked | undefined;
	/** Unit that a bare number is taken in. */
	readonly unit: string;
	readonly why: string;
	readonly mistake: string;
	readonly prompt: Prompt;
	/** The body is to be read page by page. */
	readonly long: boolean;
};

/**
 * What to show for a dialogue. While something is typed, the consequences are those that it would have: the entry is
 * tried on a copy, and counts only when it would be taken.
 */
export function viewOf(dialogue: Dialogue, typed = ''): View {
	const position = positionOf(dialogue);
	const {step, progress} = position;
	const prompt = promptInWords(promptInOrder(dialogue, position));
	const deck = deckOf(dialogue.check, progress);
	const asked = [...movesFirst(dialogue, position, deck), taskOf(dialogue, position)].join(' ');
	const shown = shownFor(dialogue, position, prompt, typed);
	return {
		...withTask(asked, shown),
		arm: said.arm({name: progress.facts.text('arm-name'), isPractice: dialogue.check.practice !== undefined}),
		stage: step ? said.stage({title: words.stages[step.stage], ...stageCount(step)}) : said.complete.stage,
		// What is asked on return has no place among what is done.
		place: step && step.stage !== 'resume' ? said.place(stageCount(step)) : '',
		// Nobody waits for an invented arm.
		minutes: step && !dialogue.check.practice ? minutesLeft(progress, dialogue.history) : null,
		deck: dialogue.mode.kind === 'ask' ? whileAsked(deck, position.slot) : deck,
		isArmInHand: dialogue.mode.kind === 'ask' && step !== undefined && isArmInHand(step),
		changes: dialogue.mode.kind === 'ask' && step ? changedBy(dialogue, step, deck) : [],
		progress: isReadyToPlay(progress) ? said.readyToPlay : said.notReadyToPlay,
		title: headOf(dialogue, position),
		sheet: sheetOf(dialogue, position),
		refusal: dialogue.refusal && says.refusal(dialogue.refusal),
		figure: figureAsked(dialogue, position),
		unit: dialogue.mode.kind === 'ask' ? unitLabel(position) : '',
		why: step ? whyOf(step, progress.facts) : '',
		mistake: step ? mistakeOf(step, progress.facts) : '',
		prompt,
		long: isLong(step) && dialogue.mode.kind === 'ask',
	};
}

/** Where nothing is asked in words, what is told first stands in the place of the task. */
function withTask(ask: string, shown: readonly Shown[]): Pick<View, 'ask' | 'askTone' | 'shown'> {
	const [first, ...others] = shown;
	if (ask !== '' || first?.kind !== 'line') return {ask, askTone: 'strong', shown};
	return {ask: first.text, askTone: first.tone === 'plain' ? 'strong' : first.tone, shown: others};
}

/** What an invented bench shows stands first, after what happened with the last entry: that must be on the first page. */
export const besideBench = (view: View, {notice}: Dialogue, seen: readonly Shown[]): View =>
	seen.length === 0 ? view : {...view, shown: view.shown.toSpliced(notice === undefined ? 0 : 1, 0, ...seen)};

/** What brings the deck to where an open step wants it; a step that is only looked at again wants nothing. */
function movesFirst({mode}: Dialogue, {step, progress}: Position, deck: Deck): readonly string[] {
	if (mode.kind !== 'ask' || !step || progress.stateOf(step) === 'done') return [];
	return movesBefore(deck, step, progress).map((move) => words.pages.deck.moves[move]);
}

/** To be read whole, however many pages that takes. */
const isLong = (step: Step | undefined): boolean =>
	step?.input.kind === 'verdict' || step?.input.kind === 'bias-result';

function shownFor(dialogue: Dialogue, position: Position, prompt: Prompt, typed: string): readonly Shown[] {
	const {mode} = dialogue;
	if (mode.kind === 'other-way') return biasLater(caseOfCheck(dialogue.check)?.findings ?? [], position.progress.facts);
	if (mode.kind !== 'ask') return mode.kind === 'side' && position.slot ? consequencesOf(dialogue, position) : [];
	const {step, progress, stuck} = position;
	const problem = stuck && step && typed.trim() === '' ? [line(problemText(progress.problemOf(step)), 'bad')] : [];
	const notice = dialogue.notice === undefined ? [] : [line(says.notice(dialogue.notice), 'warn')];
	const told = step && isFirstLook(dialogue, step, position.slot) ? cautionOf(step) : undefined;
	const caution = told === undefined ? [] : [line(told, 'warn')];
	// What is wrong comes first: on a small screen the rest may be a page further.
	const beside = triedOut(dialogue, position, prompt, typed);
	// One key says yes to all of a list: then that must be seen before anything else.
	const isWhole = step !== undefined && takes(step, 'ticks') && ticksAtOnce(dialogue, step);
	return isWhole ? [...notice, ...problem, ...beside, ...caution] : [...notice, ...problem, ...caution, ...beside];
}

/** The consequences of the step, with the typed text taken as its answer where it would be accepted. */
function triedOut(dialogue: Dialogue, position: Position, prompt: Prompt, typed: string): readonly Shown[] {
	const {step, slot, mendable} = position;
	if (!step || prompt.kind !== 'field' || slot) return consequencesOf(dialogue, position);
	if (typed.trim() === '') return mendable ? withoutAnswer(dialogue, step) : consequencesOf(dialogue, position);
	const tried = respond(dialogue, {kind: 'text', text: typed}, dialogue.check.touchedAt ?? dialogue.check.startedAt);
	if (!tried || tried.refusal || tried.mode.kind !== 'ask') return withoutAnswer(dialogue, step);
	const seen = {...tried, visiting: {step: step.id}};
	return consequencesOf(seen, positionOf(seen));
}

/** What stands beside a text that is not taken, or was not: no figure of another one. */
function withoutAnswer(dialogue: Dialogue, {id}: Step): readonly Shown[] {
	const {[id]: _other, ...answers} = dialogue.check.answers;
	const seen = {...dialogue, check: {...dialogue.check, answers}, visiting: {step: id}};
	return consequencesOf(seen, positionOf(seen));
}

function unitLabel({step, slot, progress, stuck, mendable}: Position): string {
	if (!step || (stuck && !mendable)) return '';
	if (slot) return unitText(gaugeUnitOf(progress.facts));
	return step.input.kind === 'number' || step.input.kind === 'signed'
		? unitText(unitOf(step.input, progress.facts))
		: '';
}
