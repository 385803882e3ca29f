import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {viewOf} from '../../source/pages/view.js';
import {layoutOf} from '../../source/screens/layout.js';
import {words} from '../helpers/said.js';
import {biasAnswers, northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, say, text} from '../helpers/script.js';

const script = northDeckWith({...biasAnswers, 'radius-extra': '98', 'bias-radius-middle': '98'});
const look = {color: true, unicode: true, screenReader: false};

/** The first page at 40 by 20, where one line is left free, as one run of words. */
const firstPage = (dialogue: Dialogue): string =>
	[layoutOf({view: viewOf(dialogue), width: 40, height: 19, page: 0, isWhy: false, notice: '', look})]
		.flatMap(({head, body}) => [...head, ...body].map(({text: row}) => row))
		.join(' ')
		.replace(/\s+/g, ' ');
const reminder = words.rounds.moved;
const at = (step: string): Dialogue => follow(freshDialogue(), script, {until: step});

describe('The reminder to lift the arm before the gauge is moved', () => {
	it.each(['outer', 'extra', 'closing', 'bias-outer', 'bias-middle', 'bias-inner'])(
		'is on the first page of the first reading at %s, also at 40 by 20',
		(place) => {
			expect(firstPage(at(`probe-${place}`))).toContain(reminder);
		},
	);

	it('is not repeated while the gauge stays where it is', () => {
		const first = say(at('probe-outer'), [text('1.5 out')]);
		expect(firstPage(first)).not.toContain(reminder);
		expect(firstPage(say(first, [text('5.5 out')]))).not.toContain(reminder);
	});

	it('leaves the first reading of all to the caution of its own step', () => {
		expect(firstPage(at('probe-inner'))).not.toContain(reminder);
		expect(firstPage(at('probe-inner'))).toContain(words.steps['probe-inner'].caution ?? 'no caution');
	});

	it('comes at the verdict where one more round is wanted at another radius than the last', () => {
		const atVerdict = at('verdict');
		expect(firstPage(say(atVerdict, [choose('more-outer')]))).toContain(reminder);
		// The closing round was read at the inner radius.
		expect(firstPage(say(atVerdict, [choose('more-inner')]))).not.toContain(reminder);
	});

	it('comes again for the readings with another setting of the bias device', () => {
		const next = follow(say(at('bias-result'), [choose('adjust')]), script, {until: 'probe-bias-outer'});
		expect(positionOf(next).slot).toMatchObject({place: 'bias-outer', index: 0});
		expect(firstPage(next)).toContain(reminder);
	});
});
