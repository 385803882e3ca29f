import {createInterface} from 'node:readline';
import {recordLines} from '../findings/record-lines.js';
import {converse, type Lines, type PlainEnd, textOf} from '../plain/converse.js';
import {home} from '../plain/home.js';
import {practiceHome} from '../plain/practice-home.js';
import {EXIT, ExitPaths} from '../terminal/exit-paths.js';
import {printable} from '../terminal/printable.js';
import type {OpenWorkbench} from './open-workbench.js';
import {partingLines} from './parting-lines.js';
import {refuse, type Start} from './show-face.js';

/** The check in plain lines: for screen readers, simple terminals, and answers from a pipe. */
export async function runPlain(start: Start): Promise<number> {
	const {workbench, goOn} = start;
	const paths = new ExitPaths({partingText: () => `${partingLines(workbench, goOn).join('\n')}\n`});
	paths.onLeave(workbench.release);
	paths.install();
	const lines = linesOfProcess();
	try {
		return await run(start, lines);
	} finally {
		workbench.release();
	}
}

async function run({workbench, desk, opened, notice, goOn}: Start, lines: Lines): Promise<number> {
	if (notice !== undefined) lines.say(notice);
	let opening = opened;
	for (;;) {
		if (!opening) {
			const end = await (desk ? practiceHome(desk, lines) : home(workbench, lines));
			if (end.kind === 'refused') return refuse(end.sentence, EXIT.usage);
			if (end.kind === 'not-saved') return refuse(end.sentence, EXIT.cannotReadOrWrite);
			if (end.kind !== 'opened') return leave(workbench, lines, goOn);
			opening = end.opened;
		}
		if (!opening.ok) return refuse(opening.sentence, opening.locked ? EXIT.locked : EXIT.cannotReadOrWrite);
		const end = await converse(workbench, opening.dialogue, lines);
		if (end.kind !== 'home') return finish({workbench, desk, goOn}, end, lines);
		opening = undefined;
	}
}

function finish(
	{workbench, desk, goOn}: Pick<Start, 'workbench' | 'desk' | 'goOn'>,
	end: Exclude<PlainEnd, {kind: 'home'}>,
	lines: Lines,
): number {
	if (end.kind === 'finished') {
		const truth = desk?.practice.truth(end.record) ?? [];
		for (const one of [...truth, ...recordLines(end.record)]) lines.say(textOf(one));
		for (const text of partingLines(workbench, goOn)) lines.say(text);
		return EXIT.done;
	}
	if ('sentence' in end) process.stderr.write(`${printable(end.sentence)}\n`);
	for (const text of partingLines(workbench, goOn)) lines.say(text);
	if (end.kind === 'not-saved') return EXIT.cannotReadOrWrite;
	return end.kind === 'refused' ? EXIT.usage : EXIT.leftOpen;
}

/** Left from the first questions: a check may still be open. */
function leave(workbench: OpenWorkbench, lines: Lines, goOn: string): number {
	for (const text of partingLines(workbench, goOn)) lines.say(text);
	return workbench.openCheck ? EXIT.leftOpen : EXIT.done;
}

/** Standard input and output as lines; foreign text made safe on the way out. */
function linesOfProcess(): Lines {
	const reader = createInterface({input: process.stdin, terminal: false, crlfDelay: Number.POSITIVE_INFINITY});
	const iterator = reader[Symbol.asyncIterator]();
	return {
		read: async () => {
			const {value, done} = await iterator.next();
			return done ? undefined : value;
		},
		say: (text) => {
			process.stdout.write(`${printable(text)}\n`);
		},
		piped: process.stdin.isTTY !== true,
	};
}
