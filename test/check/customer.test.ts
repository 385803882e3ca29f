import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf, startDialogue} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {newCheck} from '../../source/check/reduce.js';
import {viewOf} from '../../source/pages/view.js';
import {limitsOf, usualSettings} from '../../source/procedure/settings.js';
import {names} from '../../source/words/step-text.js';
import {titleOf, words} from '../helpers/said.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {follow, freshDialogue, goTo, say, text} from '../helpers/script.js';

const shop = 'Invented Arms';
const inShop = (): Dialogue =>
	startDialogue(
		newCheck({
			id: 'sample-1',
			at: '2026-03-02T09:00:00Z',
			program: '0.0.0',
			limits: limitsOf(usualSettings),
			setAnew: true,
			shop,
		}),
		[],
		[],
		names,
	);
const ids = ['customer-name', 'customer-complaint'] as const;
const askedIn = (dialogue: Dialogue) => {
	const asked: string[] = [];
	follow(dialogue, northDeck, {until: 'safe', seen: (one) => asked.push(positionOf(one).step?.id ?? '')});
	return asked.filter((id) => ids.some((one) => one === id));
};

describe('A customer', () => {
	it('is asked about after the arm where a shop makes the check, and nowhere else', () => {
		expect(askedIn(inShop())).toEqual(ids);
		expect(askedIn(freshDialogue())).toEqual([]);
		expect(inShop().check.shop).toBe(shop);
		expect(freshDialogue().check).not.toHaveProperty('shop');
	});

	it('may be none: an empty line goes on', () => {
		const at = follow(inShop(), northDeck, {until: 'customer-name'});
		expect(promptOf(at)).toMatchObject({kind: 'field', initial: '', mayBeEmpty: true});
		const none = say(at, [text(''), text('')]);
		expect(positionOf(none).step?.id).toBe('tools-name');
		expect(none.check.answers['customer-name']?.value).toBe('');
	});

	it('is kept as typed', () => {
		const told = follow(inShop(), northDeckWith({'customer-name': 'Ms Larkspur', 'customer-complaint': 'it hums'}), {
			until: 'safe',
		});
		expect(ids.map((id) => told.check.answers[id]?.typed)).toEqual(['Ms Larkspur', 'it hums']);
	});

	it('can be typed by one who has no shop, from the list of steps, and is no line of the page of the arm', () => {
		const here = follow(freshDialogue(), northDeck, {until: 'safe'});
		const named = say(here, [...goTo('arm', 'customer-name'), text('a friend')]);
		expect(named.check.answers['customer-name']?.value).toBe('a friend');
		expect(positionOf(named).step?.id).toBe('safe');
		const onPage = follow(freshDialogue(), northDeck, {until: 'arm-length'});
		const lines = viewOf(onPage).sheet.map((one) => (one.kind === 'line' ? one.text : ''));
		for (const id of ids)
			expect(lines.join('\n')).not.toContain(words.pages.view.sheetLine({title: titleOf(id), typed: undefined}));
	});
});
