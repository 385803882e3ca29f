import {describe, expect, it} from 'vitest';
import {issuedOf} from '../../source/pages/issued.js';
import {viewOf} from '../../source/pages/view.js';
import {namesCure} from '../../source/results/diagnose.js';
import {words} from '../helpers/said.js';
import {northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, type Script, say} from '../helpers/script.js';

// Which findings come before the bias: common practice, no source.

const verdictOf = (answers: Script['answers'] = {}, rounds: Script['rounds'] = {}) =>
	follow(freshDialogue(), northDeckWith(answers, rounds), {until: 'verdict'});
/** What stands beside the offer. */
const atOffer = (...given: Parameters<typeof verdictOf>): string =>
	viewOf(say(verdictOf(...given), [choose('other-way')]))
		.shown.map((one) => (one.kind === 'line' ? one.text : one.caption))
		.join('\n');
const sound: Script['rounds'] = {
	inner: [['0.5 in', '0.5 out']],
	outer: [['0.5 in', '0.5 out']],
	closing: [['0.5 in', '0.5 out']],
};
const later = words.bias.advice.cureFirst;

describe('The offer to set the bias', () => {
	it('comes with the word that it had better wait where the wire is to be dressed first', () => {
		const [first] = issuedOf(verdictOf().check)?.findings ?? [];
		if (first?.code !== 'spring-pull') throw new Error('the wire acts as a spring');
		expect(atOffer().split('\n')).toContain(later);
		const {prompt} = viewOf(say(verdictOf(), [choose('other-way')]));
		expect(prompt.kind === 'choice' && prompt.options.map(({id}) => id)).toContain('bias');
	});

	it('is not made where readings tell nothing', () => {
		const off = say(verdictOf({}, {inner: [['4 out', '20 out']]}), [choose('other-way')]);
		const {prompt} = viewOf(off);
		expect(prompt.kind === 'choice' && prompt.options.map(({id}) => id)).not.toContain('bias');
	});

	it('comes without it where nothing is to be cured', () => {
		expect(atOffer({}, sound)).not.toContain(later);
	});

	it('comes without it where the arm has no bias device', () => {
		expect(atOffer({'arm-bias-device': 'none'})).not.toContain(later);
	});

	it.each([
		'off-scale',
		'pull-and-friction',
		'moved',
		'tilt-explains',
		'not-level',
		'constant-pull',
		'spring-pull',
		'runaway-pull',
		'friction',
		'friction-local',
		'no-pattern',
	] as const)('had better wait after the finding %s', (code) =>
		expect(namesCure([{code: 'undecided'}, {code}])).toBe(true),
	);

	it.each(['undecided', 'sound', 'bias-idle', 'bias-uneven', 'bias-rubs', 'bias-off-scale'] as const)(
		'need not wait after the finding %s alone',
		(code) => expect(namesCure([{code}])).toBe(false),
	);

	it('need not wait where bias was seen to carry a steady pull', () => {
		expect(namesCure([{code: 'constant-pull'}, {code: 'playable-with-bias'}])).toBe(false);
	});
});
