import type {Dialogue} from '../check/dialogue.js';
import {beforeAnotherArm} from '../pages/another-arm.js';
import {nudgeKeys} from '../pages/nudge-keys.js';
import {line, type Shown} from '../pages/shown-lines.js';
import {viewOf} from '../pages/view.js';
import {words} from '../words/index.js';
import type {PracticeBench} from '../workbench.js';
import {type Lines, plainText, plainTexts, promptLines} from './ask.js';

const lookMs = 500;
/** An arm that still creeps after so many looks is left to creep. */
const mostLooks = 60;

/** What an invented bench shows at a question: while that is read, the arm has come to rest. */
export function seenAtBench(bench: PracticeBench | undefined, dialogue: Dialogue): readonly Shown[] {
	const shown = bench?.shown(dialogue) ?? [];
	if (!bench?.isProbing(dialogue)) return shown;
	settle(bench);
	const [arm, ...others] = bench.shown(dialogue);
	return [...(arm ? [arm] : []), line(words.faces.nudge.lines), ...others];
}

/**
 * Reads until a line is an answer. A line for an invented bench is not: `!` does by hand what is offered; one of `<`, `>`,
 * `,` and `.` nudges the arm so often, each time until it is still.
 */
export async function readLine(
	bench: PracticeBench | undefined,
	dialogue: Dialogue,
	lines: Lines,
): Promise<string | undefined> {
	for (;;) {
		const text = await lines.read();
		if (text === undefined || !bench || !isForBench(bench, dialogue, text.trim(), lines)) return text;
	}
}

function isForBench(bench: PracticeBench, dialogue: Dialogue, entry: string, lines: Lines): boolean {
	if (entry === '!') {
		const isDone = bench.doByHand(dialogue);
		if (!isDone) lines.say(words.faces.plain.nothingByHand);
		else for (const text of plainTexts(bench.shown(dialogue))) lines.say(text);
		if (isDone && bench.isTruthShown(dialogue))
			for (const one of promptLines(beforeAnotherArm(viewOf(dialogue)).prompt)) lines.say(one);
		return true;
	}
	if (!bench.isProbing(dialogue) || !/^[<>,.][<>,.\s]*$/.test(entry)) return false;
	for (const key of entry) {
		const nudge = nudgeKeys[key];
		if (!nudge) continue;
		bench.nudge(nudge);
		settle(bench);
		const [arm] = bench.shown(dialogue);
		if (arm) lines.say(`${key} ${plainText(arm)}`);
	}
	return true;
}

function settle(bench: PracticeBench): void {
	for (let looks = 0; looks < mostLooks && bench.motion() !== 'settled'; looks++) bench.pass(lookMs);
}
