import {describe, expect, it} from 'vitest';
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {finishedCheck} from '../../source/desk/filing.js';
import {biasLines} from '../../source/pages/bias/lines.js';
import {recordLines} from '../../source/pages/record-lines.js';
import type {Shown} from '../../source/pages/shown-lines.js';
import {viewOf} from '../../source/pages/view.js';
import {biasAnswers, northDeckWith} from '../helpers/sample-check.js';
import type {Script} from '../helpers/script.js';
import {choose, follow, freshDialogue, say} from '../helpers/script.js';

const words = (shown: readonly Shown[]): string =>
	shown.map((one) => (one.kind === 'line' ? one.text : one.caption)).join('\n');
const seen = (dialogue: Dialogue): string => words(viewOf(dialogue).shown);

const scriptWith = (answers: Script['answers'], rounds: Script['rounds'] = {}): Script =>
	northDeckWith({...biasAnswers, ...answers}, rounds);
const at = (step: string, answers: Script['answers'] = {}, rounds: Script['rounds'] = {}): Dialogue =>
	follow(freshDialogue(), scriptWith(answers, rounds), {until: step});

/** Bands so narrow that friction hides nothing. */
const narrow: Script['rounds'] = {
	inner: [['0.5 in', '0.5 out']],
	outer: [['0.5 in', '0.5 out']],
	closing: [['0.5 in', '0.5 out']],
};
// Skating wants 12.5 % at 136 mm and 11.8 % at 68 mm of this arm.
const onAt = (outer: number, inner: number): Script['rounds'] => ({
	...narrow,
	'bias-outer': [[`${outer - 0.5} out`, `${outer + 0.5} out`]],
	'bias-inner': [[`${inner - 0.5} out`, `${inner + 0.5} out`]],
});

describe('What skating asks of the arm', () => {
	it('is said before anything is read: outside, least, inside, and that the drag is assumed', () => {
		const text = seen(at('bias-drag'));
		// 30 times (L² + r² − D²) / (2Lr), which is 0.4293 at 146 mm and 0.4110 at 60 mm; least at √(L² − D²) = 88.8 mm,
		// where it is 88.8 / 233 = 0.3813.
		expect(text).toMatch(/12\.9 % out at 146 mm, 11\.4 % out at 89 mm and 12\.3 % out at 60 mm/);
		expect(text).toContain('if the drag is 0.30, which is assumed');
		expect(text).toContain('drag of 0.05 more or less moves that by 2.1 %');
		expect(text).toContain('least at 89 mm');
		expect(text).toContain('own pull without bias: 5.4 % out at 68 mm and 3.4 % out at 136 mm');
	});

	it('follows the drag that is being typed', () => {
		expect(words(viewOf(at('bias-drag'), '0.2').shown)).toContain('8.6 % out at 146 mm');
	});

	it('makes plain that it is a torque, and that the groove wall gives a little more', () => {
		expect(seen(at('bias-drag'))).toMatch(
			/torque that bias must cancel: drag times the sine.*a little more: drag times the tangent/s,
		);
	});

	it('is all that an arm without bias device gets', () => {
		const text = seen(at('bias-drag', {'arm-bias-device': 'none'}));
		expect(text).toContain('no bias device');
		expect(text).toContain('own pull without bias');
	});

	it('comes after the word that an arm that sticks lets bias be set no finer than half its band', () => {
		const sticky: Script['rounds'] = {
			inner: [['5 in', '5 out']],
			outer: [['1 in', '1 out']],
			closing: [['5 in', '5 out']],
		};
		const [first = ''] = seen(at('bias-drag', {}, sticky)).split('\n');
		expect(first).toContain('beyond limits');
		expect(first).toMatch(/no finer than half of it, ±5\.\d %/);
	});

	it('warns where the wanted reading and half the band pass the top of the scale', () => {
		expect(seen(at('bias-on'))).not.toContain('cannot show it');
		expect(seen(at('bias-drag'))).not.toContain('cannot show it');
		// A drag of 0.45 wants 100 × 0.45 × 0.394971 = 17.77 % at 68 mm and 18.74 % at 136 mm; half the bands of 5.875 and
		// 4.167 % and the zero of 0.125 % make 20.84 and 20.95 %, to the step of 0.5 %.
		expect(words(viewOf(at('bias-drag'), '0.45').shown)).toContain(
			'the outer limit may come to 21.0 % out at 68 mm and 21.0 % out at 136 mm: this gauge ends at 20 % and cannot show it.',
		);
	});
});

describe('What a bias setting came to', () => {
	it('stands at each radius while it is read', () => {
		const text = seen(at('bias-clock-outer', {}, {}));
		expect(text).toBe('');
		const shownAfter = follow(freshDialogue(), scriptWith({}), {
			until: 'bias-clock-outer',
			seen: (dialogue) => {
				if (positionOf(dialogue).step?.id !== 'probe-bias-outer' || positionOf(dialogue).slot) return;
				expect(seen(dialogue)).toContain('Read 9.1 % out, wanted 12.5 % out: 3.4 % too little. Bias alone: 5.8 % out.');
			},
		});
		expect(positionOf(shownAfter).step?.id).toBe('bias-clock-outer');
	});

	it('says first what to set the gauge to, then the device in its own words', () => {
		const text = seen(at('bias-result'));
		// The worked example: 13.31 and 11.42 % of the playing force; with the zero of 0.125 %, to the step of 0.5 %.
		const reading = text.indexOf(
			'Set it so that the gauge shows 13.5 % out at 136 mm and 11.5 % out at 68 mm, in the middle of both limits.',
		);
		const weight = text.indexOf('Its weight from 2.4 g to 4.1 g');
		expect(reading).toBeGreaterThan(0);
		expect(weight).toBeGreaterThan(reading);
		expect(text).toContain('at most 0.9 % instead of 3.8 %');
		expect(text).toContain('friction floor 2.9 %');
	});

	it.each([
		['weight-on-thread', 'Its weight from 2.4 g to'],
		['spring', 'times the present setting, then probe again'],
		['magnet', 'Turn it up, to about'],
		['other', 'times the present setting, then probe again'],
	])('speaks of a %s as it is set', (device, sentence) => {
		const rounds = onAt(9, 8);
		expect(
			seen(at('bias-result', {'arm-bias-device': device, 'bias-angle-outer': '', 'bias-angle-inner': ''}, rounds)),
		).toContain(sentence);
	});

	it('says how the best setting moves with the drag', () => {
		expect(seen(at('bias-result'))).toMatch(
			/\d\.\d\d times with a drag of 0\.25 and \d\.\d\d times with a drag of 0\.35/,
		);
	});

	it('is done once what is left lies under the friction floor', () => {
		const wide: Script['rounds'] = {
			inner: [['2 in', '2 out']],
			outer: [['2 in', '2 out']],
			closing: [['2 in', '2 out']],
			'bias-outer': [['11 out', '15 out']],
			'bias-inner': [['10 out', '14 out']],
		};
		expect(seen(at('bias-result', {}, wide))).toMatch(/under the friction floor of 2\.\d %\. Leave it so/);
	});

	it('says so when no setting of the device can do', () => {
		expect(seen(at('bias-result', {}, onAt(13, 6)))).toMatch(/No setting of this device can do better than \d\.\d %/);
	});

	it('tells of the lever: how much of the weight acts, and what another place would gain', () => {
		const text = seen(at('bias-result'));
		expect(text).toContain('The lever stands at 8:30 at 136 mm and 7:15 at 68 mm');
		expect(text).toContain('61 to 97 % of the weight act');
		// Both stand below the level, 9 o'clock.
		expect(text).toMatch(/shorter thread.*the lever stands 0\.\d hours of the clock higher/);
	});

	it('tells where a lever that falls far below its level had better stay', () => {
		// 9 o'clock outside and 7:15 inside: all of the weight, and sin 37.5° = 0.61 of it; 12 and 7.3 % bias.
		const text = seen(at('bias-result', {'bias-clock-outer': '9:00', 'bias-clock-inner': '7:15'}, onAt(12, 7.3)));
		expect(text).toContain('61 to 100 % of the weight act');
		expect(text).toMatch(/shorter thread.*higher.*about level over the whole record.*nearer to the arm's pivot/s);
	});

	it('tells of a thread by its angle to the stub', () => {
		const answers = {'arm-bias-device': 'weight-on-thread', 'bias-angle-outer': '85', 'bias-angle-inner': '30'};
		const text = seen(at('bias-result', answers, onAt(12, 6)));
		expect(text).toContain('Thread to stub: 85° at 136 mm and 30° at 68 mm');
		expect(text).toMatch(/square to the stub/);
	});

	it('says that the lever does not explain the bias where both change otherwise over the record, and advises no other place', () => {
		// Skating of this arm is nearly level over the record, and so is this bias; the lever lets half of it act inside.
		const text = seen(at('bias-result', {'bias-clock-inner': '7:00'}, onAt(12, 11.5)));
		expect(text).toMatch(
			/The lever as read does not explain the bias: from 136 to 68 mm the lever would make it fall by \d\.\d %, but the readings make it fall by 0\.5 %/,
		);
		expect(text).not.toMatch(/gain nothing|leaves less|would be left|For another time/);
	});

	it('says the same of a thread', () => {
		const answers = {'arm-bias-device': 'weight-on-thread', 'bias-angle-outer': '85', 'bias-angle-inner': '40'};
		expect(seen(at('bias-result', answers, onAt(12, 12)))).toContain('The thread as read does not explain the bias');
	});

	it('doubts no lever where friction hides the difference', () => {
		// Half the widest band is 2.9 %.
		expect(seen(at('bias-result'))).not.toContain('does not explain');
	});

	it('says that another place would gain nothing only where the lever does what skating asks for', () => {
		const even = {'bias-clock-outer': '9:00', 'bias-clock-inner': '8:30'};
		expect(seen(at('bias-result', even, onAt(12.5, 12)))).toContain('Moving pulley or thread would gain nothing.');
	});

	it('says otherwise where the arm’s own pull makes up for what the lever does not do', () => {
		const pulled: Script['rounds'] = {
			...onAt(12.5, 12),
			inner: [['5.5 out', '6.5 out']],
			closing: [['5.5 out', '6.5 out']],
		};
		const text = seen(at('bias-result', {'bias-clock-inner': '7:00'}, pulled));
		expect(text).toContain("with the arm's own pull as it is, no other place of pulley or thread leaves less");
		expect(text).not.toMatch(/gain nothing|does not explain/);
	});

	it('tells what it means in the groove, before and after', () => {
		expect(seen(at('bias-result'))).toMatch(
			/In the groove.*136 mm: no bias \d+ \/ \d+; [\d.]+ µm [\d.]+°, as set.*at best/s,
		);
	});

	it('is at hand while the next one is set, and read', () => {
		const next = say(at('bias-result'), [choose('adjust')]);
		expect(seen(next)).toContain('the gauge shows 13.5 % out at 136 mm');
		const reading = follow(next, scriptWith({}), {until: 'probe-bias-outer'});
		expect(seen(reading)).toContain(
			'Best with this device: the gauge shows 11.5 % out at the inner and 15.0 % out at the outer limit, 13.5 % out in the middle.',
		);
	});

	it('stands beside the others that were tried, the best one marked', () => {
		const first = at('bias-result', {}, onAt(9, 8));
		const better = scriptWith({'bias-weight': '3.2'}, onAt(12.5, 12));
		const second = follow(say(first, [choose('adjust')]), better, {until: 'bias-result'});
		const text = seen(second);
		expect(text).toMatch(/Setting 1: 2\.4 g, third notch: at most \d\.\d % left over the record\n/);
		expect(text).toMatch(/Setting 2: 3\.2 g, third notch: at most \d\.\d % left over the record \(best so far\)/);
	});

	it('stays in the record, with the readings of every setting', () => {
		const {check} = follow(freshDialogue(), scriptWith({}));
		const text = words(recordLines(finishedCheck(check, '2026-03-02T12:00:00Z')));
		expect(text).toContain('Bias setting kept: number 1: 2.4 g, third notch; drag 0.30 assumed');
		expect(text).toContain('bias on, outer, setting 1: 2.4 g, third notch, round 1: 7.5 % out / 11 % out');
	});

	it('that was kept is named, and nothing is to be set any more; what was not taken is told', () => {
		const {check} = follow(freshDialogue(), scriptWith({}));
		const shown = biasLines(check);
		const text = words(shown);
		expect(text).toContain(
			'At most 3.8 % is left over the record (friction floor 2.9 %). Not taken: about 1.7 times its pull, which would leave 0.9 %.',
		);
		expect(text).not.toMatch(/Set it so|set gauge to|probe again/);
		expect(text).toContain('For another time: at its best setting 0.9 % is left; with a shorter thread');
	});

	it('that was kept is marked among those that were tried, beside the one that leaves least', () => {
		const first = at('bias-result', {}, onAt(9, 8));
		const better = scriptWith({'bias-weight': '3.2'}, onAt(12.5, 12));
		const second = follow(say(first, [choose('adjust')]), better, {until: 'bias-result'});
		const text = words(biasLines(say(second, [choose('back-to:1')]).check));
		expect(text).toContain('Bias setting kept: number 1: 2.4 g, third notch');
		expect(text).toMatch(/Setting 1: 2\.4 g, third notch: at most \d\.\d % left over the record \(kept\)/);
		expect(text).toMatch(/Setting 2: 3\.2 g, third notch: at most \d\.\d % left over the record \(least left\)/);
	});
});
