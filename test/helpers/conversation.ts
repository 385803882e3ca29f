import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {besidePages} from '../../source/pages/beside/beside-pages.js';
import {viewOf} from '../../source/pages/view.js';
import {converse} from '../../source/plain/converse.js';
import {plainRoom, walkPages} from '../../source/plain/walk-pages.js';
import {linesOf} from './lines.js';
import {memoryWorkbench} from './memory-workbench.js';
import {words} from './said.js';
import {northDeck} from './sample-check.js';
import {clockOf, follow, freshDialogue, lineOf, type Script} from './script.js';

/** The lines that answer a script, up to a step. */
export function linesFor(script: Script, until?: string): string[] {
	const lines: string[] = [];
	let listed: string | undefined;
	follow(freshDialogue(), script, {
		...(until === undefined ? {} : {until}),
		seen: (dialogue, entry) => {
			const {prompt} = viewOf(dialogue);
			const list = prompt.kind === 'yes-no' && prompt.lines ? positionOf(dialogue).step?.id : undefined;
			// One line answers a whole list.
			if (list === undefined || list !== listed) lines.push(lineOf(prompt, entry));
			listed = list;
		},
	});
	return lines;
}

type Memory = NonNullable<Parameters<typeof memoryWorkbench>[0]>;
type Given = Memory & {readonly piped?: boolean; readonly from?: Dialogue};

/** A conversation over the given lines, and what became of it; over the sample check, where nothing else is said. */
export const run = async (given: readonly string[], {piped = true, from = at('arm-name'), ...memory}: Given = {}) => {
	const workbench = memoryWorkbench(memory, clockOf(from));
	const lines = linesOf(given, piped);
	const end = await converse(workbench, from, lines);
	return {end, said: lines.said, left: lines.left(), memory: workbench.memory};
};
/** The sample check just before a step. */
export const at = (until: string): Dialogue => follow(freshDialogue(), northDeck, {until});

/** The pages beside a check in plain lines, from the first one on. */
export const walkBeside = async (
	given: readonly string[],
	memory: Parameters<typeof memoryWorkbench>[0] = {},
	piped = true,
) => {
	const workbench = memoryWorkbench(memory);
	const lines = linesOf(given, piped);
	const end = await walkPages(besidePages(workbench, plainRoom), lines);
	return {end, said: lines.said, text: lines.said.join('\n'), workbench, memory: workbench.memory, left: lines.left()};
};

const aQuestion = words.faces.plain.question({number: 7, arm: '', stage: '', progress: '', title: ''});
/** The lines with which questions begin. */
export const questionsIn = (said: readonly string[]): string[] =>
	said.filter((line) => line.startsWith(aQuestion.slice(0, aQuestion.indexOf('7'))));
