import {type Dialogue, type Position, positionOf} from '../check/dialogue.js';
import {isReadyToPlay, stageCount} from '../check/progress.js';
import {type Prompt, promptOf} from '../check/prompt.js';
import {respond} from '../check/respond.js';
import type {Slot} from '../check/rounds.js';
import type {Facts} from '../procedure/facts.js';
import type {Trouble} from '../procedure/problem.js';
import {unitOf} from '../procedure/read-answer.js';
import {gaugeUnitOf} from '../procedure/readings.js';
import type {Step, Words} from '../procedure/step.js';
import {limitAsk} from '../procedure/steps-probe.js';
import {units} from '../units.js';
import {promptInWords, says} from '../words/says.js';
import {consequencesOf} from './consequences.js';
import {line, type Shown} from './shown-lines.js';

/** Everything that a face draws for one question. */
export type View = {
	readonly arm: string;
	readonly stage: string;
	/** Number of the stage, of so many; and the state of the deck. */
	readonly progress: string;
	readonly title: string;
	readonly ask: string;
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
	const prompt = promptInWords(promptOf(dialogue));
	const count = step ? stageCount(progress, step) : undefined;
	return {
		arm: `${dialogue.check.practice ? 'PRACTICE: ' : ''}${progress.facts.text('arm-name') ?? 'new arm'}`,
		stage: count ? `${count.title} (${count.number}/${count.of})` : 'Complete',
		progress: isReadyToPlay(progress) ? 'ready to play' : 'deck not ready to play',
		title: titleOf(dialogue, step),
		ask: askOf(dialogue, position),
		shown: shownFor(dialogue, position, prompt, typed),
		refusal: dialogue.refusal && says.refusal(dialogue.refusal),
		unit: unitLabel(step, position),
		why: step ? words(step.why, progress.facts) : '',
		mistake: step ? words(step.mistake, progress.facts) : '',
		prompt,
		long: isLong(step) && dialogue.mode.kind === 'ask',
	};
}

const words = (text: Words, facts: Facts): string => (typeof text === 'function' ? text(facts) : text);

const detourTitles = {
	ways: 'What to do?',
	reason: 'Why go on?',
	'reason-typed': 'Why go on?',
	strike: 'Which round is struck out?',
	remedy: 'Which remedy?',
	steps: 'All steps',
	stop: 'Stop here?',
} as const;

function titleOf({mode}: Dialogue, step: Step | undefined): string {
	if (mode.kind === 'ask') return step?.title ?? 'The check is complete';
	if (mode.kind === 'side') return `${step?.title ?? ''}: which side?`;
	if ((mode.kind === 'reason' || mode.kind === 'reason-typed') && mode.excused.kind === 'strike')
		return 'Why is it struck out?';
	return detourTitles[mode.kind];
}

function askOf({mode}: Dialogue, {step, slot, progress: {facts, problemOf}}: Position): string {
	switch (mode.kind) {
		case 'ask':
			if (step?.input.kind === 'rounds') return askOfRounds(step, slot, facts);
			return step ? words(step.ask, facts) : 'The check is complete.';
		case 'side':
			return `You typed ${mode.typed}. On which side?`;
		case 'ways':
			return problemText(step && problemOf(step));
		case 'reason':
		case 'reason-typed':
			return mode.excused.kind === 'override'
				? 'The reason stands beside the verdict and in the saved check for good.'
				: 'The round stays in the record and leaves the figures.';
		case 'strike':
			return 'It stays in the record, out of the figures.';
		case 'remedy':
			return 'The rounds so far close as one series; the rounds after the remedy are a new one, and both stand side by side.';
		case 'steps':
			return '+ done  ? confirm again  ! does not pass  ~ overridden';
		case 'stop':
			return 'The rest of the check is left out and the put-back list comes next. You can carry on later from the list of steps. Stop here?';
	}
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
	return `${isFirstReading(slot) ? `${words(step.ask, facts)} ` : ''}${limitAsk(facts, slot)}`;
}

function shownFor(dialogue: Dialogue, position: Position, prompt: Prompt, typed: string): readonly Shown[] {
	const {mode} = dialogue;
	if (mode.kind !== 'ask') return mode.kind === 'side' && position.slot ? consequencesOf(dialogue, position) : [];
	const {step, progress, stuck} = position;
	const problem = stuck && step && typed.trim() === '' ? [line(problemText(progress.problemOf(step)), 'bad')] : [];
	const notice = dialogue.notice === undefined ? [] : [line(says.notice(dialogue.notice), 'warn')];
	const caution =
		step?.caution && (!isRounds(step) || isFirstReading(position.slot)) ? [line(step.caution, 'warn')] : [];
	// What is wrong comes first: on a small screen the rest may be a page further.
	return [...notice, ...problem, ...triedOut(dialogue, position, prompt, typed), ...caution];
}

/** The consequences of the step, with the typed text taken as its answer where it would be accepted. */
function triedOut(dialogue: Dialogue, position: Position, prompt: Prompt, typed: string): readonly Shown[] {
	const {step, slot} = position;
	if (!step || prompt.kind !== 'field' || typed.trim() === '' || slot) return consequencesOf(dialogue, position);
	const tried = respond(dialogue, {kind: 'text', text: typed}, dialogue.check.touchedAt ?? dialogue.check.startedAt);
	if (!tried || tried.refusal || tried.mode.kind !== 'ask') return consequencesOf(dialogue, position);
	return consequencesOf({...tried, visiting: {step: step.id}}, positionOf({...tried, visiting: {step: step.id}}));
}

function unitLabel(step: Step | undefined, {slot, progress, stuck, mendable}: Position): string {
	if (!step || (stuck && !mendable)) return '';
	if (slot) return units[gaugeUnitOf(progress.facts)].label;
	return step.input.kind === 'number' || step.input.kind === 'signed'
		? units[unitOf(step.input, progress.facts)].label
		: '';
}
