import fc from 'fast-check';
import stringWidth from 'string-width';
import {describe, expect, it} from 'vitest';
import {type Dialogue, startDialogue} from '../../source/check/dialogue.js';
import type {Prompt} from '../../source/check/prompt.js';
import {reduce} from '../../source/check/reduce.js';
import {type View, viewOf} from '../../source/pages/view.js';
import {textRows} from '../../source/screens/body.js';
import {type Layout, layoutOf} from '../../source/screens/layout.js';
import type {Look} from '../../source/screens/look.js';
import {words} from '../helpers/said.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {choose, clockOf, follow, freshDialogue, say, text, waysOut} from '../helpers/script.js';
import {type Move, move, moves, stations} from '../helpers/wandering.js';

const {faces} = words;

const looks: readonly Look[] = [
	{color: true, unicode: true, screenReader: false},
	{color: false, unicode: false, screenReader: false},
	{color: false, unicode: true, screenReader: true},
];
const onScreen: Look = {color: true, unicode: true, screenReader: false};
// One line less than the terminal has: a frame as tall as the terminal makes Ink clear it.
type Size = {readonly width: number; readonly height: number};
const sizes: readonly Size[] = [
	{width: 80, height: 23},
	{width: 40, height: 19},
	{width: 100, height: 49},
];

/** The lines that a control is made of, as the prompt's control words them. */
function controlLines(prompt: Prompt): string[] {
	switch (prompt.kind) {
		case 'yes-no':
			return [faces.yesNo(prompt)];
		case 'side':
			return prompt.options.map(faces.side);
		case 'still':
			return [faces.allStill, ...prompt.items.map((item, index) => faces.noLonger({number: index + 1, item}))];
		case 'field':
			return ['>'];
		default:
			return [];
	}
}

/** What does not fit, in words; empty when all does. */
function faults({head, body, foot, controlRows}: Layout, {width, height}: Size, view: View, look: Look) {
	const rows = [...head, ...body, ...foot];
	const wide = rows.filter((row) => stringWidth(row.text) > width).map((row) => `too wide: ${row.text}`);
	const needed = controlLines(view.prompt).flatMap((one) => textRows(one, width, look)).length;
	const control = Math.max(controlRows, needed);
	const tall = rows.length + control;
	return [
		...wide,
		...(tall > height ? [`${tall} of ${height} lines at ${view.stage}, ${view.title} (${view.prompt.kind})`] : []),
		...(view.prompt.kind === 'choice' && controlRows < Math.min(3, view.prompt.options.length)
			? [`no room to choose at ${view.title}`]
			: []),
	];
}

const allFaults = (dialogue: Dialogue): string[] => faultsOf(viewOf(dialogue));

function faultsOf(view: View): string[] {
	return sizes.flatMap((size) =>
		looks.flatMap((look) => {
			const at = (page: number, isWhy: boolean, notice = '') => layoutOf({view, ...size, page, isWhy, notice, look});
			const first = at(0, false);
			const last = first.pages > 1 ? [at(first.pages - 1, false)] : [];
			const asked = [first, ...last, at(0, false, 'Settling: 5 s … beep')];
			return [
				...asked.flatMap((layout) => faults(layout, size, view, look)),
				...faults(at(0, true), size, {...view, prompt: {key: 'why', kind: 'none'}}, look),
			].map((one) => `${size.width} × ${size.height}: ${one}`);
		}),
	);
}

/** What stands at each station. */
const views: readonly View[] = stations.map((one) => viewOf(one));

describe('Every screen of a check', () => {
	it.each(views.map((one, index) => [index, one] as const))(
		'fits its terminal, station %d of a whole check',
		(_index, one) => {
			expect(faultsOf(one)).toEqual([]);
		},
	);

	it('fits on every detour: side, reason, struck round, remedy, steps, stop', () => {
		const verdict = follow(freshDialogue(), northDeck, {until: 'verdict'});
		const clearance = say(follow(freshDialogue(), northDeck, {until: 'guard-gap'}), [text('1.7')]);
		const probe = follow(freshDialogue(), northDeck, {until: 'probe-inner'});
		const detours = [
			say(probe, [text('3')]),
			say(probe, [text('3 out'), text('8.5 out'), text('-2.5'), text('8')]),
			startDialogue(reduce(verdict.check, {type: 'resume', at: '2026-03-04T12:00:00Z'}), []),
			say(follow(freshDialogue(), northDeck, {until: 'level-fb-1'}), [text('0.1')]),
			say(follow(freshDialogue(), northDeckWith({'gauge-turns': 'no'}), {until: 'probe-inner'}), [
				{kind: 'back'},
				text('4'),
			]),
			clearance,
			say(clearance, [waysOut, choose('override')]),
			say(clearance, [waysOut, choose('override'), choose('other')]),
			say(verdict, [choose('strike')]),
			say(verdict, [choose('strike'), choose('inner:0')]),
			say(verdict, [choose('other-way')]),
			say(verdict, [{kind: 'steps'}]),
			say(verdict, [{kind: 'steps'}, choose('stage:arm')]),
			say(verdict, [{kind: 'stop'}]),
		];
		for (const one of detours) expect(allFaults(one)).toEqual([]);
	});

	it('fits with long and foreign names, reasons and notes', () => {
		for (const name of ['漢字'.repeat(20), '👩‍👩‍👧'.repeat(16), 'x'.repeat(80), 'a '.repeat(39), 'é'.repeat(80)]) {
			const script = northDeckWith({'arm-name': name, 'room-note': name, 'cartridge-name': name});
			const verdict = follow(freshDialogue(), script, {until: 'verdict'});
			expect(allFaults(verdict)).toEqual([]);
			expect(allFaults(follow(freshDialogue(), script, {until: 'guard-gap'}))).toEqual([]);
		}
	});

	it('fits with a refusal of anything that can be typed', () => {
		const here = follow(freshDialogue(), northDeck, {until: 'guard-gap'});
		for (const junk of ['x'.repeat(3000), '\u001B[2J', '漢字'.repeat(400), '1.2.3', '999999999'])
			expect(allFaults(move(here, {kind: 'entry', entry: text(junk)}, here.check.touchedAt ?? ''))).toEqual([]);
	});

	it('fits wherever someone wanders', () => {
		const walks = fc.record({from: fc.nat(stations.length - 1), path: fc.array(moves, {maxLength: 20})});
		fc.assert(
			fc.property(walks, ({from, path}) => {
				let here = stations[from];
				const now = here && clockOf(here);
				for (const one of path satisfies readonly Move[]) {
					if (here && now) here = move(here, one, now());
					if (here) expect(allFaults(here)).toEqual([]);
				}
			}),
			{numRuns: 15, seed: 20_260_302},
		);
	});

	it('tells the state of the deck in its head line, at any width', () => {
		const view = viewOf(follow(freshDialogue(), northDeck, {until: 'guard-gap'}));
		for (const size of sizes)
			for (const look of looks) {
				const {head} = layoutOf({view, ...size, page: 0, isWhy: false, notice: '', look});
				expect(head.map((row) => row.text).join('\n')).toContain(words.pages.view.notReadyToPlay);
			}
	});
});

/** One station for each question that is asked in its own way. */
const questions: readonly Dialogue[] = [
	...new Map(
		views.map(({title, ask, prompt, shown}, index) => {
			const one = stations[index] ?? freshDialogue();
			return [[title, ask, prompt.kind, ...shown.map(({kind}) => kind)].join('|'), one] as const;
		}),
	).values(),
];

/** A sentence in a language that takes 35 % more room. */
const longer = (text: string): string => `${text} ${text.slice(0, Math.ceil(0.35 * text.length)).trim()}`;

/** A view whose sentences are all longer. */
function longerView(view: View): View {
	const {prompt} = view;
	return {
		...view,
		title: longer(view.title),
		ask: longer(view.ask),
		why: longer(view.why),
		mistake: longer(view.mistake),
		refusal: view.refusal && longer(view.refusal),
		sheet: view.sheet.map((one) => (one.kind === 'line' ? {...one, text: longer(one.text)} : one)),
		shown: view.shown.map((one) => (one.kind === 'line' ? {...one, text: longer(one.text)} : one)),
		prompt:
			prompt.kind === 'choice'
				? {...prompt, options: prompt.options.map(({id, label}) => ({id, label: longer(label)}))}
				: prompt,
	};
}

describe('In another language', () => {
	it.each(questions.map((one, index) => [index, one] as const))(
		'sentences that are 35 %% longer fit too, question %d of a whole check',
		(_index, one) => {
			const view = longerView(viewOf(one));
			for (const size of sizes)
				for (const isWhy of [false, true]) {
					const layout = layoutOf({view, ...size, page: 0, isWhy, notice: '', look: onScreen});
					const seen: View = isWhy ? {...view, prompt: {key: 'why', kind: 'none'}} : view;
					expect(faults(layout, size, seen, onScreen)).toEqual([]);
				}
		},
	);
});

describe('Nothing jumps', () => {
	// Beyond this a frame does not grow.
	const mostRows = 39;

	it.each(questions.map((one, index) => [index, one] as const))(
		'from page to page, while something is typed, refused or waited for, question %d of a whole check',
		(_index, one) => {
			const view = viewOf(one);
			for (const size of sizes) {
				const look = onScreen;
				const at = (page: number, typed = '', notice = '') =>
					layoutOf({
						view: typed === '' ? view : viewOf(one, typed),
						typed,
						...size,
						page,
						isWhy: false,
						notice,
						look,
					});
				const first = at(0);
				const others = [at(first.pages - 1), at(0, '', words.faces.settled), ...(view.unit === '' ? [] : [at(0, '1')])];
				for (const {head, body, controlRows, foot} of [first, ...others]) {
					expect(head.length).toBe(first.head.length);
					expect(head.length + body.length).toBe(first.head.length + first.body.length);
					expect(head.length + body.length + controlRows + foot.length).toBe(Math.min(size.height, mostRows));
				}
			}
		},
	);

	it('from step to step: bar, deck and task stand in the same rows, and a field in the same row', () => {
		for (const size of sizes)
			for (const look of looks.slice(0, 2)) {
				const all = views
					.filter(({ask}) => ask.length <= size.width)
					.map((view) => ({view, layout: layoutOf({view, ...size, page: 0, isWhy: false, notice: '', look})}));
				expect(new Set(all.map(({layout: {head}}) => head.length)).size).toBe(1);
				const fields = all.filter(({view: {prompt}}) => prompt.kind === 'field');
				const rowsAbove = fields.map(({layout: {head, body, foot}}) => head.length + body.length + foot.length);
				expect(new Set(rowsAbove).size).toBe(1);
			}
	});
});

describe('A long body', () => {
	const verdict = viewOf(follow(freshDialogue(), northDeck, {until: 'verdict'}));
	const look = {color: false, unicode: true, screenReader: false};
	const pageAt = (page: number) =>
		layoutOf({view: verdict, width: 40, height: 19, page, isWhy: false, notice: '', look});

	it('is turned page by page, and no word of it is lost', () => {
		const {pages} = pageAt(0);
		expect(pages).toBeGreaterThan(2);
		const shown = Array.from({length: pages}, (_, page) => pageAt(page).body.map((row) => row.text)).flat();
		// The numbers begin on a page of their own, and the page before it says so.
		const noted = (page: number) => {
			const next = page === 1 ? words.pages.verdict.numbers : undefined;
			return faces.page({page: page + 1, of: pages, byArrows: true, next});
		};
		const notes = Array.from({length: pages}, (_, page) => noted(page));
		expect(shown.filter((line) => notes.includes(line))).toEqual(notes);
		const seen = new Set(shown.flatMap((line) => line.split(/\s+/)));
		const wanted = verdict.shown.flatMap((one) => (one.kind === 'line' ? one.text.split(/\s+/) : []));
		expect(wanted.filter((word) => !seen.has(word))).toEqual([]);
	});

	it('stays at its last page when more is asked for', () => {
		expect(pageAt(99)).toEqual(pageAt(pageAt(0).pages - 1));
		expect(pageAt(-3)).toEqual(pageAt(0));
	});
});
