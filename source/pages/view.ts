import {deckOf, movesBefore} from '../check/deck-state.js';
import {type Dialogue, type Position, positionOf} from '../check/dialogue.js';
import {isReadyToPlay, stageCount} from '../check/progress.js';
import type {Prompt} from '../check/prompt.js';
import {respond} from '../check/respond.js';
import type {Slot} from '../check/rounds.js';
import type {Deck} from '../procedure/deck.js';
import type {Facts} from '../procedure/facts.js';
import type {Trouble} from '../procedure/problem.js';
import {unitOf} from '../procedure/read-answer.js';
import {gaugeUnitOf} from '../procedure/readings.js';
import type {Step} from '../procedure/step.js';
import {limitAsked} from '../procedure/steps-probe.js';
import {caseOfCheck} from '../results/tried.js';
import {units} from '../units.js';
import {words} from '../words/index.js';
import {promptInWords, says} from '../words/says.js';
import {askOf, cautionOf, mistakeOf, shortAskOf, titleOf, whyOf} from '../words/step-text.js';
import {biasLater} from './bias/advice.js';
import {consequencesOf} from './consequences.js';
import {changedBy} from './deck-changes.js';
import {sheetOf} from './sheet-lines.js';
import {line, type Shown} from './shown-lines.js';
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
	/** The parts of the deck that this step changes. */
	readonly changes: readonly (keyof Deck)[];
	/** Whether it is ready to play. */
	readonly progress: string;
	readonly title: string;
	readonly ask: string;
	/** The lines of the page that the question belongs to: what was answered, and what is still to come. */
	readonly sheet: readonly Shown[];
	readonly shown: readonly Shown[];
	/** Why the last entry was not taken. */
	readonly refusal: string | undefined;
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
	return {
		arm: said.arm({name: progress.facts.text('arm-name'), isPractice: dialogue.check.practice !== undefined}),
		stage: step ? said.stage({title: words.stages[step.stage], ...stageCount(step)}) : said.complete.stage,
		place: step ? said.place(stageCount(step)) : '',
		minutes: step ? minutesLeft(progress) : null,
		deck,
		changes: dialogue.mode.kind === 'ask' && step ? changedBy(dialogue, step, deck) : [],
		progress: isReadyToPlay(progress) ? said.readyToPlay : said.notReadyToPlay,
		title: headOf(dialogue, step),
		ask: [...movesFirst(dialogue, position, deck), taskOf(dialogue, position)].join(' '),
		sheet: sheetOf(dialogue, position),
		shown: shownFor(dialogue, position, prompt, typed),
		refusal: dialogue.refusal && says.refusal(dialogue.refusal),
		unit: unitLabel(position),
		why: step ? whyOf(step, progress.facts) : '',
		mistake: step ? mistakeOf(step, progress.facts) : '',
		prompt,
		long: isLong(step) && dialogue.mode.kind === 'ask',
	};
}

/** What an invented bench shows stands first, after what happened with the last entry: that must be on the first page. */
export const besideBench = (view: View, {notice}: Dialogue, seen: readonly Shown[]): View =>
	seen.length === 0 ? view : {...view, shown: view.shown.toSpliced(notice === undefined ? 0 : 1, 0, ...seen)};

function headOf({mode}: Dialogue, step: Step | undefined): string {
	switch (mode.kind) {
		case 'ask':
			return step ? titleOf(step.id) : said.complete.title;
		case 'side':
			return said.side.title({title: step ? titleOf(step.id) : ''});
		case 'reason':
		case 'reason-typed':
			return said.reason[mode.excused.kind].title;
		case 'ways':
		case 'strike':
		case 'other-way':
		case 'steps':
		case 'stop':
			return said.titles[mode.kind];
	}
}

function taskOf({mode, isBrisk}: Dialogue, {step, slot, progress: {facts, problemOf}}: Position): string {
	switch (mode.kind) {
		case 'ask':
			if (!step) return said.complete.ask;
			if (step.input.kind === 'rounds') return askOfRounds(step, slot, facts);
			return (isBrisk ? shortAskOf : askOf)(step, facts);
		case 'side':
			return said.side.ask(mode);
		case 'ways':
			return problemText(step && problemOf(step));
		case 'reason':
		case 'reason-typed':
			return said.reason[mode.excused.kind].ask;
		case 'strike':
		case 'other-way':
		case 'steps':
		case 'stop':
			return said.asks[mode.kind];
	}
}

/** What brings the deck to where an open step wants it; a step that is only looked at again wants nothing. */
function movesFirst({mode}: Dialogue, {step, progress}: Position, deck: Deck): readonly string[] {
	if (mode.kind !== 'ask' || !step || progress.stateOf(step) === 'done') return [];
	return movesBefore(deck, step, progress).map((move) => words.pages.deck.moves[move]);
}

const problemText = (problem: Trouble | undefined): string => (problem ? says.problem(problem) : '');

/** To be read whole, however many pages that takes. */
const isLong = (step: Step | undefined): boolean =>
	step?.input.kind === 'verdict' || step?.input.kind === 'bias-result';

const isRounds = ({input}: Step): boolean => input.kind === 'rounds';
const isFirstReading = (slot: Slot | undefined): boolean => slot?.index === 0 && slot.which === 'innerLimit';

/** Where to set the gauge, once; then only which way to nudge. */
function askOfRounds(step: Step, slot: Slot | undefined, facts: Facts): string {
	if (!slot) return '';
	return `${isFirstReading(slot) ? `${askOf(step, facts)} ` : ''}${words.rounds.limit(limitAsked(facts, slot))}`;
}

function shownFor(dialogue: Dialogue, position: Position, prompt: Prompt, typed: string): readonly Shown[] {
	const {mode} = dialogue;
	if (mode.kind === 'other-way') return biasLater(caseOfCheck(dialogue.check)?.findings ?? [], position.progress.facts);
	if (mode.kind !== 'ask') return mode.kind === 'side' && position.slot ? consequencesOf(dialogue, position) : [];
	const {step, progress, stuck} = position;
	const problem = stuck && step && typed.trim() === '' ? [line(problemText(progress.problemOf(step)), 'bad')] : [];
	const notice = dialogue.notice === undefined ? [] : [line(says.notice(dialogue.notice), 'warn')];
	const told = step && (!isRounds(step) || isFirstReading(position.slot)) ? cautionOf(step) : undefined;
	const caution = told === undefined ? [] : [line(told, 'warn')];
	// What is wrong comes first: on a small screen the rest may be a page further.
	return [...notice, ...problem, ...triedOut(dialogue, position, prompt, typed), ...caution];
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
	if (slot) return units[gaugeUnitOf(progress.facts)].label;
	return step.input.kind === 'number' || step.input.kind === 'signed'
		? units[unitOf(step.input, progress.facts)].label
		: '';
}
