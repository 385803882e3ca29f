import type {Dialogue} from '../check/dialogue.js';
import type {Entry} from '../check/entry.js';
import type {Notice} from '../check/says.js';
import {beforeAnotherArm} from '../pages/another-arm.js';
import type {Filed} from '../pages/beside/page.js';
import {afterSaving, checkTurn} from '../pages/check-turn.js';
import {besideBench, type View, viewOf} from '../pages/view.js';
import {words} from '../words/index.js';
import {says} from '../words/says.js';
import type {Workbench} from '../workbench.js';
import {entryOf, type Lines, plainCommands, plainText, unknownCommand} from './ask.js';
import {readLine, seenAtBench} from './at-bench.js';
import {Teller} from './teller.js';

export type PlainEnd =
	/** What went wrong after it was filed stands in a notice. */
	| {readonly kind: 'finished'; readonly record: Filed; readonly notice?: Notice | undefined}
	| {readonly kind: 'left' | 'home' | 'input-ended'}
	/** A piped answer was not taken; earlier ones are saved. */
	| {readonly kind: 'refused' | 'not-saved'; readonly sentence: string};

const say = words.faces.plain;

/** A whole check line by line. Each question has a number, so that a voice or a log can refer to it. */
export async function converse(workbench: Workbench, start: Dialogue, lines: Lines): Promise<PlainEnd> {
	let dialogue = start;
	const teller = new Teller(lines);
	lines.say(say.commands({commands: plainCommands}));
	for (let number = 1; ; number++) {
		const seen = seenAtBench(workbench.practice, dialogue);
		const view = viewAtBench(workbench, dialogue, seen);
		if (view.prompt.kind === 'none') {
			const end = await file(workbench, dialogue, lines);
			if (end) return end;
		}
		teller.tell(number, view, dialogue, seen);
		const text = await readLine(workbench.practice, dialogue, lines);
		const asked = workbench.practice?.isTruthShown(dialogue) ? viewAtBench(workbench, dialogue) : view;
		if (text === undefined) return {kind: 'input-ended'};
		if (text.trim() === '/leave') return {kind: 'left'};
		if (isWhy(text)) {
			lines.say(words.faces.why(view));
			continue;
		}
		if (text.trim() === '/again') {
			teller.forget();
			continue;
		}
		// Filing is tried once more.
		if (view.prompt.kind === 'none' && !commandOf(text)) continue;
		const taken = unmended(asked, text, lines) ?? (await take(workbench, dialogue, asked, text));
		if (taken.kind === 'end') return taken.end;
		if (taken.kind === 'next') {
			teller.tellOutcome(view, dialogue, text, taken.dialogue);
			dialogue = taken.dialogue;
			continue;
		}
		if (taken.kind === 'not-saved') {
			if (lines.piped) return taken;
			lines.say(taken.sentence);
			continue;
		}
		if (lines.piped)
			return {
				kind: 'refused',
				sentence: say.refused({number, title: view.title, answer: text.trim(), because: taken.sentence}),
			};
		lines.say(taken.sentence);
		dialogue = taken.dialogue;
	}
}

const finishedWith = (record: Filed, notice: Notice | undefined): PlainEnd => ({
	kind: 'finished',
	record,
	...(notice && {notice}),
});

function viewAtBench({practice}: Workbench, dialogue: Dialogue, seen = seenAtBench(practice, dialogue)): View {
	const view = besideBench(viewOf(dialogue), dialogue, seen);
	return practice?.isTruthShown(dialogue) ? beforeAnotherArm(view) : view;
}

/** A check that came to its end and could not be filed then: it is filed now, or any line tries once more. */
async function file(workbench: Workbench, dialogue: Dialogue, lines: Lines): Promise<PlainEnd | undefined> {
	const saved = await workbench.save(dialogue);
	if (saved.ok) return saved.finished ? finishedWith(saved.finished, saved.notice) : undefined;
	const because = saved.sentence;
	if (lines.piped) return {kind: 'not-saved', sentence: words.faces.notSaved({because})};
	lines.say(say.notFiledAgain({because}));
	return;
}

const isWhy = (text: string): boolean => ['/why', '?', '*'].includes(text.trim());

type PlainStop = {readonly kind: 'end'; readonly end: PlainEnd};

type Taken =
	| {readonly kind: 'next'; readonly dialogue: Dialogue}
	| PlainStop
	| {readonly kind: 'not-saved'; readonly sentence: string}
	/** What is asked next may be another question: after a side that cannot be, the reading itself. */
	| {readonly kind: 'refused'; readonly sentence: string; readonly dialogue: Dialogue};

/**
 * In a prepared file the line after a number that did not pass was meant for the next question: only an empty line,
 * which shows the ways out, or a command goes on from there.
 */
function unmended({prompt, shown}: View, text: string, {piped}: Lines): PlainStop | undefined {
	if (!piped || prompt.kind !== 'field' || !prompt.waysOut || text.trim() === '' || commandOf(text)) return;
	const problem = shown.find((one) => one.kind === 'line' && one.tone === 'bad');
	const sentence = say.unmended({answer: text.trim(), problem: problem && plainText(problem)});
	return {kind: 'end', end: {kind: 'refused', sentence}};
}

/** Takes one line as an answer or a command, and puts what changed on the disk. */
async function take(workbench: Workbench, dialogue: Dialogue, {prompt}: View, text: string): Promise<Taken> {
	const entry = commandOf(text) ?? unknownCommand(text) ?? entryOf(prompt, text);
	if (typeof entry === 'string') return {kind: 'refused', sentence: entry, dialogue};
	const turn = checkTurn(dialogue, entry, workbench.now());
	if (turn.kind === 'home') return {kind: 'end', end: {kind: 'home'}};
	return turn.kind === 'save' ? await kept(workbench, turn.dialogue) : takenOrTold(turn.dialogue);
}

const takenOrTold = (dialogue: Dialogue): Taken =>
	dialogue.refusal === undefined
		? {kind: 'next', dialogue}
		: {kind: 'refused', sentence: says.refusal(dialogue.refusal), dialogue};

/** An entry may be refused and yet change the check: after a long silence the conditions are asked first. */
async function kept(workbench: Workbench, next: Dialogue): Promise<Taken> {
	const saved = await workbench.save(next);
	// The answer stands; that the check is not filed yet is told where that is tried once more.
	if (!saved.ok && saved.answerSaved) return {kind: 'next', dialogue: next};
	if (!saved.ok) return {kind: 'not-saved', sentence: say.notSavedAgain({because: saved.sentence})};
	if (saved.finished) return {kind: 'end', end: finishedWith(saved.finished, saved.notice)};
	return takenOrTold(afterSaving(next, saved, workbench));
}

function commandOf(text: string): Entry | undefined {
	const typed = text.trim();
	// The number pad has no letters.
	if (typed === '/') return {kind: 'back'};
	const kind = (['back', 'steps', 'stop'] as const).find((one) => typed === `/${one}`);
	return kind && {kind};
}
