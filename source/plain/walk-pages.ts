import type {Page, Pages} from '../pages/page.js';
import {promptLines} from './ask.js';
import {askUntil, choose} from './choose.js';
import {type Lines, textOf} from './converse.js';

export type PagesEnd =
	| {readonly kind: 'out'; readonly reopen?: string | undefined}
	| {readonly kind: 'left' | 'input-ended'}
	| {readonly kind: 'refused' | 'not-saved'; readonly sentence: string};

type Entered = {readonly kind: 'entry'; readonly entry: string} | {readonly kind: 'back'} | PagesEnd;

/** Pages beside a check, one after the other, until they are left. '/back' goes to the page before. */
export async function walkPages<P>(pages: Pages<P>, lines: Lines): Promise<PagesEnd> {
	let place = pages.start;
	for (;;) {
		const page = pages.pageOf(place);
		const entered = await enter(page, lines);
		if (entered.kind === 'back') {
			const before = pages.backOf(place);
			if (before === undefined) return {kind: 'out'};
			place = before;
			continue;
		}
		if (entered.kind !== 'entry') return entered;
		const turn = pages.turn(place, entered.entry);
		if (turn.kind === 'out') return {kind: 'out', reopen: turn.reopen};
		if (turn.kind === 'go') place = turn.to;
		else {
			const failed = turn.kind === 'refused' ? turn : await kept(turn.save);
			if (failed && lines.piped) return {...failed, sentence: `${page.title}: ${failed.sentence}`};
			if (failed) lines.say(failed.sentence);
			else if (turn.kind === 'save') place = turn.to;
		}
	}
}

type Failed = {readonly kind: 'refused' | 'not-saved'; readonly sentence: string};

async function kept(save: () => Promise<{ok: true} | {ok: false; sentence: string}>): Promise<Failed | undefined> {
	const saved = await save();
	return saved.ok ? undefined : {kind: 'not-saved', sentence: `NOT SAVED: ${saved.sentence}`};
}

async function enter({title, shown, prompt}: Page, lines: Lines): Promise<Entered> {
	if (prompt.kind === 'choice') {
		const chosen = await choose(title, shown, prompt.options, lines);
		return chosen.kind === 'chosen' ? {kind: 'entry', entry: chosen.id} : chosen;
	}
	if (prompt.kind === 'yes-no') {
		// An empty line decides nothing.
		const asked = await askUntil(title, shown, {key: title, ...prompt}, lines, true);
		return asked.kind === 'entry' ? {kind: 'entry', entry: asked.entry.kind} : asked;
	}
	lines.say('');
	const {initial, mayBeEmpty, unit} = prompt;
	const asked = promptLines({key: title, kind: 'field', initial, mayBeEmpty, given: true});
	for (const text of [title, ...shown.map(textOf), ...asked]) lines.say(text);
	if (unit !== '') lines.say(`Unit if none is typed: ${unit}`);
	const text = await lines.read();
	if (text === undefined) return {kind: 'input-ended'};
	if (text.trim() === '/leave') return {kind: 'left'};
	if (text.trim() === '/back') return {kind: 'back'};
	return {kind: 'entry', entry: text.trim() === '' ? initial : text};
}
