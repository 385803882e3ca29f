import {createInterface} from 'node:readline';
import {besidePages} from '../pages/beside/beside-pages.js';
import type {Filed} from '../pages/beside/page.js';
import {lobbyPages} from '../pages/beside/practice-lobby.js';
import {justFiled} from '../pages/record-lines.js';
import {type Lines, plainTexts} from '../plain/ask.js';
import {converse, type PlainEnd} from '../plain/converse.js';
import {plainRoom, walkPages} from '../plain/walk-pages.js';
import {EXIT, ExitPaths} from '../terminal/exit-paths.js';
import {printable} from '../terminal/printable.js';
import {says} from '../words/says.js';
import {refuseWith, sayFault} from './print.js';
import type {Seat, Start} from './seat.js';

/** The check in plain lines: for screen readers, simple terminals, and answers from a pipe. */
export async function runPlain(start: Start): Promise<number> {
	const {seat} = start;
	const paths = new ExitPaths({partingText: () => `${seat.parting().join('\n')}\n`});
	paths.onLeave(seat.release);
	paths.install();
	const lines = linesOfProcess();
	try {
		return await run(start, lines);
	} finally {
		seat.release();
	}
}

async function run({seat, opened, notice, desk: first}: Start, lines: Lines): Promise<number> {
	if (notice !== undefined) lines.say(notice);
	let [opening, desk] = [opened, first];
	let filed: Filed | undefined;
	for (;;) {
		if (!opening) {
			const end = await (desk
				? walkPages(lobbyPages(desk, first === undefined), lines, filed)
				: walkPages(besidePages(seat.workbench, plainRoom), lines));
			if (end.kind === 'real-checks') {
				seat.door?.close();
				desk = undefined;
				continue;
			}
			if (end.kind === 'practice') {
				const practice = await seat.door?.open();
				if (!practice) continue;
				if (!practice.ok) return refuseWith(practice.sentence, EXIT.cannotReadOrWrite);
				desk = practice.desk;
				continue;
			}
			if (end.kind === 'refused') return refuseWith(end.sentence);
			if (end.kind === 'not-saved') return refuseWith(end.sentence, EXIT.cannotReadOrWrite);
			if (end.kind !== 'opened') return leave(seat, lines);
			opening = end.opened;
		}
		if (!opening.ok) return refuseWith(opening.sentence, opening.locked ? EXIT.locked : EXIT.cannotReadOrWrite);
		const end = await converse(desk ?? seat.workbench, opening.dialogue, lines);
		filed = desk && end.kind === 'finished' ? end.record : undefined;
		if (end.kind !== 'home' && !filed) return finish(seat, end, lines);
		opening = undefined;
	}
}

function finish(seat: Seat, end: Exclude<PlainEnd, {kind: 'home'}>, lines: Lines): number {
	if (end.kind === 'finished') {
		for (const text of plainTexts(justFiled(end.record))) lines.say(text);
		if (end.notice) sayFault(says.notice(end.notice));
		for (const text of seat.parting()) lines.say(text);
		return EXIT.done;
	}
	if ('sentence' in end) sayFault(end.sentence);
	for (const text of seat.parting()) lines.say(text);
	if (end.kind === 'not-saved') return EXIT.cannotReadOrWrite;
	return end.kind === 'refused' ? EXIT.usage : EXIT.leftOpen;
}

/** Left from the first questions: a check may still be open. */
function leave(seat: Seat, lines: Lines): number {
	for (const text of seat.parting()) lines.say(text);
	return seat.isLeftOpen ? EXIT.leftOpen : EXIT.done;
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
