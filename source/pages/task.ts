import type {Check} from '../check/check.js';
import type {Dialogue, Position} from '../check/dialogue.js';
import type {Slot} from '../check/rounds.js';
import type {Facts} from '../procedure/facts.js';
import type {Trouble} from '../procedure/problem.js';
import type {Step} from '../procedure/step.js';
import {limitAsked} from '../procedure/steps-probe.js';
import {words} from '../words/index.js';
import {says} from '../words/says.js';
import {askOf, shortAskOf, titleOf} from '../words/step-text.js';
import {numberTyped} from '../words/typed.js';
import {handsFirst} from './probe-so-far.js';
import {roundAsked} from './rounds-to-scale.js';

const said = words.pages.view;

/** The title of a screen, with the round where rounds are taken. */
export function headOf({check, mode}: Dialogue, {step, slot}: Position): string {
	switch (mode.kind) {
		case 'ask':
			return step ? said.titled({title: titleOf(step.id), round: roundAsked(check, slot)}) : said.complete.title;
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

/** What is to be done, or asked. */
export function taskOf({check, mode, isBrisk}: Dialogue, {step, slot, progress: {facts, problemOf}}: Position): string {
	switch (mode.kind) {
		case 'ask':
			if (!step) return said.complete.ask;
			if (step.input.kind === 'rounds') return askOfRounds(check, step, slot, facts);
			return (isBrisk ? shortAskOf : askOf)(step, facts);
		case 'side':
			return said.side.ask({typed: numberTyped(mode.typed)});
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

const isFirstReading = (slot: Slot | undefined): boolean => slot?.index === 0 && slot.which === 'innerLimit';

/** Whether a step with several readings or lines is looked at for the first time: then its caution is told. */
export function isFirstLook({check}: Dialogue, {id, input}: Step, slot: Slot | undefined): boolean {
	if (input.kind === 'rounds') return isFirstReading(slot);
	return input.kind !== 'ticks' || check.answers[id] === undefined;
}

/** Where to set the gauge, once; then only which way to nudge. */
function askOfRounds(check: Check, step: Step, slot: Slot | undefined, facts: Facts): string {
	if (!slot) return '';
	const start = isFirstReading(slot) ? askOf(step, facts) : '';
	return [handsFirst(check, facts, slot), start, words.rounds.limit(limitAsked(facts, slot))]
		.filter((part) => part !== '')
		.join(' ');
}

/** What keeps a step from passing, in words; empty where nothing does. */
export const problemText = (problem: Trouble | undefined): string => (problem ? says.problem(problem) : '');
