import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import type {Entry} from '../../source/check/entry.js';
import {type AskedPrompt, promptOf} from '../../source/check/prompt.js';
import {newCheck, reduce} from '../../source/check/reduce.js';
import {respond} from '../../source/check/respond.js';
import {recheckAction} from '../../source/desk/starting-answers.js';
import {type Step, sheetStages} from '../../source/procedure/step.js';
import {profilesWith} from '../../source/results/profiles.js';
import {clockOf, freshDialogue} from '../helpers/script.js';

/**
 * How long a way through a check is, up to its first probe reading: screens, each of which waits for a key, and presses
 * of keys. Questions that stand line under line on one page are one screen. Names have five letters.
 */
export type CountedWay = {
	readonly screens: number;
	readonly keys: number;
	/** Without what is typed as a reading of level, scale and feeler. */
	readonly keysBesideReadings: number;
};

/** What an invented deck and its technician answer; a choice by its id. */
const answers: Readonly<Record<string, string>> = {
	'arm-name': 'cedar',
	'arm-length': '233',
	'arm-pivot-distance': '215.4',
	'playing-force': '2.1',
	'arm-bias-device': 'weighted-lever',
	'tools-name': 'blues',
	'gauge-top': '20',
	'guard-mass': '0.4',
	'guard-depth': '1.3',
	'level-lr-1': '0.15',
	'level-lr-2': '0.05',
	'level-fb-1': '0.05',
	'level-fb-2': '0.1',
	'bias-setting': '3',
	'force-reading': '2.1',
	'guard-gap': '1.3',
};

const readings = ['level-lr-1', 'level-lr-2', 'level-fb-1', 'level-fb-2', 'force-reading', 'guard-gap'];

type Press = {readonly entry: Entry; readonly keys: number};

/** What is pressed: a digit that marks a line and Enter, Enter alone where the line is marked already, one key for y. */
function pressFor(prompt: AskedPrompt, step: Step): Press {
	const wanted = answers[step.id];
	switch (prompt.kind) {
		case 'field': {
			const isOffered =
				prompt.initial !== '' && (prompt.given === true || wanted === undefined || prompt.initial.startsWith(wanted));
			const typed = isOffered ? '' : (wanted ?? '');
			const text = typed === '' ? prompt.initial : typed;
			return {entry: {kind: 'text', text: text === '' ? '-' : text}, keys: (text === '' ? 1 : typed.length) + 1};
		}
		case 'choice': {
			const id = wanted ?? prompt.initial ?? prompt.options[0]?.id ?? '';
			const marked = prompt.initial ?? prompt.options[0]?.id;
			return {entry: {kind: 'choose', id}, keys: id === marked ? 1 : 2};
		}
		case 'side':
			return {entry: {kind: 'choose', id: prompt.options[0]?.id ?? ''}, keys: 1};
		case 'yes-no':
		case 'still':
		case 'none':
			return {entry: {kind: 'yes'}, keys: 1};
	}
}

const screenOf = ({id, stage}: Step): string => (sheetStages.includes(stage) ? stage : id);

/** Counts a way from home on; home is one screen on which a line is marked already. */
function counted(start: Dialogue): {way: CountedWay; end: Dialogue} {
	let [here, screens, keys, typedAsReading, last] = [start, 1, 1, 0, ''];
	const now = clockOf(start);
	for (;;) {
		const {step} = positionOf(here);
		if (!step || step.input.kind === 'rounds') break;
		const {entry, keys: pressed} = pressFor(promptOf(here), step);
		const next = respond(here, entry, now());
		if (!next || next.refusal)
			throw new Error(`${step.id} does not take ${JSON.stringify(entry)}: ${next?.refusal?.id}`);
		if (screenOf(step) !== last) screens++;
		last = screenOf(step);
		keys += pressed;
		if (readings.includes(step.id)) typedAsReading += pressed;
		here = next;
	}
	return {way: {screens: screens + 1, keys, keysBesideReadings: keys - typedAsReading}, end: here};
}

/** The three ways: a new arm and gauge, both known, and a re-check; the first reading's own screen is counted. */
export function countedWays(): Readonly<Record<'newArm' | 'known' | 'recheck', CountedWay>> {
	const first = counted(freshDialogue());
	const {check} = first.end;
	const profiles = profilesWith([], check, check.startedAt);
	const known = counted(freshDialogue(profiles, 'sample-2'));
	const {limits, setAnew, startedAt} = check;
	const blank = newCheck({id: 'sample-3', at: startedAt, program: '0.0.0', limits, setAnew});
	const again = reduce(blank, recheckAction(check, profiles, startedAt));
	const recheck = counted({...freshDialogue(profiles, 'sample-3'), check: again});
	return {newArm: first.way, known: known.way, recheck: recheck.way};
}
