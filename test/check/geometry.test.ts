import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, goTo, say, text, waysOut} from '../helpers/script.js';

const at = (until: string, answers: Readonly<Record<string, string>> = {}) =>
	follow(freshDialogue(), northDeckWith(answers), {until});
const ways = (dialogue: Dialogue) => {
	const prompt = promptOf(dialogue);
	return prompt.kind === 'choice'
		? prompt.options.map(({label}) => (label.id === 'way' ? label.values.way : label.id))
		: [];
};

/** The answer that does not pass, and what can be corrected. */
const stuckAt = (dialogue: Dialogue) => {
	const {stuck, mendable, step} = positionOf(dialogue);
	return stuck ? [step?.id, ...ways(mendable ? say(dialogue, [waysOut]) : dialogue)] : [];
};

describe('Lengths and radii that cannot be together', () => {
	it('are told where they come to light: the arm never crosses the record', () => {
		const dialogue = say(at('arm-pivot-distance'), [text('350')]);
		expect(stuckAt(dialogue)).toEqual(['arm-pivot-distance', 'correct-length', 'correct-pivot']);
	});

	it('an outer radius inside the inner one', () => {
		const dialogue = say(at('tools-name', {'radius-inner': '100'}), [...goTo('arm', 'radius-outer'), text('95')]);
		expect(stuckAt(dialogue)).toEqual(['radius-outer', 'correct-outer', 'correct-inner']);
	});

	it.each(['136', '68'])('a third radius that is one of the two: %s', (typed) => {
		const dialogue = say(at('tools-name'), [...goTo('arm', 'radius-extra'), text(typed)]);
		expect(stuckAt(dialogue)).toEqual(['radius-extra', 'correct-third']);
		const mended = say(dialogue, [waysOut, choose('way-0')]);
		// Without a third radius the probe goes on: it is asked anew only by someone who wants one.
		expect(stuckAt(mended)).toEqual([]);
		expect(stuckAt(say(dialogue, [text('98')]))).toEqual([]);
	});

	it('an inner radius where the automatic stop takes hold', () => {
		const dialogue = say(at('tools-name', {'arm-auto-stop': 'yes', 'radius-inner': '75'}), [
			...goTo('arm', 'radius-inner'),
			text('70'),
		]);
		expect(stuckAt(dialogue)).toEqual(['radius-inner', 'correct-inner', 'correct-stop']);
		expect(stuckAt(say(dialogue, [text('75')]))).toEqual([]);
	});

	it('are told as well when one of them is corrected later', () => {
		const verdict = follow(freshDialogue(), northDeck, {until: 'verdict'});
		const dialogue = say(verdict, [...goTo('arm', 'arm-length'), text('130')]);
		expect(positionOf(dialogue)).toMatchObject({step: {id: 'arm-pivot-distance'}});
	});
});

describe('A tracking force outside its range', () => {
	it('is told with both ends', () => {
		const dialogue = say(at('force-reading'), [text('25 mN')]);
		expect(stuckAt(dialogue)[0]).toBe('force-reading');
	});

	it('allows for a guard that was left out', () => {
		const dialogue = say(at('force-reading', {weighed: 'without', 'guard-account': 'add'}), [text('21 mN')]);
		// 21 mN and 0.4 g of guard are 24.9 mN; the range ends at 24 mN.
		expect(stuckAt(dialogue)[0]).toBe('force-reading');
	});

	it('is a range that holds the playing force', () => {
		const typed = (step: string, force: string) => say(at('tools-name'), [...goTo('arm', step), text(force)]);
		expect(stuckAt(typed('force-low', '21.5 mN'))[0]).toBe('force-low');
		expect(stuckAt(typed('force-high', '20 mN'))[0]).toBe('force-high');
		expect(stuckAt(typed('force-low', '21 mN'))).toEqual([]);
	});
});

describe('A guard', () => {
	it('deeper than 2.2 mm asks for the mat to be taken off', () => {
		const dialogue = say(at('mat', {'guard-depth': '2.5'}), [choose('on')]);
		expect(stuckAt(dialogue)[0]).toBe('mat');
		expect(positionOf(say(dialogue, [choose('way-0')])).step?.id).toBe('mat-thickness');
	});

	it('that was left out with an unknown mass is weighed again, or its mass typed', () => {
		// About the guard's weight too little on the scale: it was left out.
		const off = say(at('force-reading', {'guard-mass': ''}), [text('17.1 mN'), waysOut]);
		expect(ways(off)).toEqual(['set-force-guarded', 'weighed-without', 'regardless']);
		const dialogue = say(off, [choose('way-1')]);
		expect(stuckAt(dialogue)).toEqual(['weighed', 'weigh-guarded', 'type-guard-mass']);
		const massed = say(dialogue, [choose('way-1'), text('0.4 g')]);
		expect(positionOf(massed).step?.id).toMatch(/^(weighed|guard-account)$/);
		expect(positionOf(say(dialogue, [choose('way-0')])).step?.id).toBe('force-reading');
	});

	it('must hang more than 0.5 mm clear', () => {
		// The stylus stands 5.5 mm high, and the guard hangs down to 0.5 mm.
		const deep = say(at('guard-gap', {'guard-depth': '5'}), [text('0.5')]);
		expect(stuckAt(deep)).toEqual(['guard-gap', 'set-height', 'take-mat-off', 'regardless']);
	});
});

describe('The level', () => {
	it('does not pass on one reading alone', () => {
		const dialogue = say(at('level-fb-2', {'level-lr-2': ''}), [text('')]);
		expect(stuckAt(dialogue)[0]).toBe('level-fb-2');
		const again = say(dialogue, [choose('way-0')]);
		expect(positionOf(again).step?.id).toBe('level-lr-2');
	});

	it('does not pass beyond half a degree, whatever the arm makes of it', () => {
		const spring = {'arm-loading': 'spring', 'guard-mass': ''};
		const dialogue = say(at('level-fb-2', {...spring, 'level-fb-1': '0.6 back'}), [text('0.6 back')]);
		expect(stuckAt(dialogue)[0]).toBe('level-fb-2');
	});
});
