import type {Entry} from '../check/entry.js';
import type {Prompt} from '../check/prompt.js';
import type {BesidePage, FaceRoom, Filed, Pages, Turn} from '../pages/beside/page.js';
import {words} from '../words/index.js';
import type {Opened} from '../workbench.js';
import {entryOf, type Lines, plainTexts, promptLines} from './ask.js';

/** Where pages led to. */
export type WalkEnd =
	| {readonly kind: 'opened'; readonly opened: Opened}
	| {readonly kind: 'practice' | 'real-checks' | 'leave' | 'input-ended'}
	| Failed;

type Failed = {readonly kind: 'refused' | 'not-saved'; readonly sentence: string};

/** A line may be long, and a list too: it is read out. */
export const plainRoom: FaceRoom = {listRows: 20, columns: 100, hasKeys: false};

const say = words.faces.plain;

/**
 * Pages beside a check, one after the other, until they lead to a check or away. '/back' goes to the page before.
 *
 * @param filed a check that has just come to its end: its page is the first one
 */
export async function walkPages<P>(pages: Pages<P>, lines: Lines, filed?: Filed): Promise<WalkEnd> {
	let place = filed ? pages.filed(filed) : pages.start;
	for (;;) {
		const {page, turn, back} = pages.at(place);
		const asked = await ask(page, lines);
		if (asked.kind !== 'back' && asked.kind !== 'entry') return asked;
		const next = asked.kind === 'back' ? back : turn(asked.entry);
		const taken = await take(next);
		if (taken.kind === 'go') place = taken.to;
		else if (taken.kind !== 'refused' && taken.kind !== 'not-saved') return taken;
		else if (lines.piped)
			return {kind: taken.kind, sentence: say.refusedOn({title: page.title, because: taken.sentence})};
		else lines.say(taken.sentence);
	}
}

async function take<P>(turn: Turn<P>): Promise<Extract<Turn<P>, {kind: 'go'}> | WalkEnd> {
	switch (turn.kind) {
		case 'save': {
			const saved = await turn.save();
			if (saved.ok) return {kind: 'go', to: turn.to};
			return {kind: 'not-saved', sentence: words.faces.notSaved({because: saved.sentence})};
		}
		case 'open':
			return {kind: 'opened', opened: await turn.open()};
		case 'go':
		case 'refused':
		case 'practice':
		case 'real-checks':
		case 'leave':
			return turn;
	}
}

type Asked =
	| {readonly kind: 'entry'; readonly entry: string}
	| {readonly kind: 'back'}
	| {readonly kind: 'leave' | 'input-ended'}
	| Failed;

/** Asks until a line is an entry for the page, or leads away; a pipe ends at the first line that is neither. */
async function ask({title, shown, prompt, esc}: BesidePage, lines: Lines): Promise<Asked> {
	const wanted: Prompt = {key: title, ...prompt, ...(prompt.kind === 'field' ? {given: true} : {})};
	lines.say('');
	for (const text of [title, ...plainTexts(shown), ...promptLines(wanted)]) lines.say(text);
	if (prompt.kind === 'field' && prompt.unit !== '') lines.say(say.unit(prompt));
	for (;;) {
		const text = await lines.read();
		if (text === undefined) return {kind: 'input-ended'};
		const answer = text.trim();
		if (answer === '/leave') return {kind: 'leave'};
		if ((answer === '/back' || answer === '/') && esc === undefined) return {kind: 'back'};
		const entry = entryOf(wanted, text);
		if (typeof entry !== 'string') return {kind: 'entry', entry: textOfEntry(entry)};
		if (lines.piped) return {kind: 'refused', sentence: say.refusedChoice({title, answer, because: entry})};
		lines.say(entry);
	}
}

function textOfEntry(entry: Entry): string {
	if (entry.kind === 'text') return entry.text;
	return entry.kind === 'choose' ? entry.id : entry.kind;
}
