import {describe, expect, it} from 'vitest';
import {positionOf} from '../../source/check/dialogue.js';
import {respond} from '../../source/check/respond.js';
import {openSeries} from '../../source/check/series.js';
import {converse} from '../../source/plain/converse.js';
import {linesOf} from '../helpers/lines.js';
import {memoryWorkbench} from '../helpers/memory-workbench.js';
import {northDeck} from '../helpers/sample-check.js';
import {clockFrom, follow, freshDialogue, text, yes} from '../helpers/script.js';

const probing = follow(freshDialogue(), northDeck, {until: 'probe-inner'});
const touchedAt = Date.parse(probing.check.touchedAt ?? '');
const minutesOn = (minutes: number) => new Date(touchedAt + 60_000 * minutes).toISOString();

describe('A program left open without an entry', () => {
	it('for less than half an hour takes the next reading', () => {
		const next = respond(probing, text('3 out'), minutesOn(29));
		expect(next && openSeries(next.check).inner).toHaveLength(1);
	});

	it.each([30, 45, 900])(
		'for %d minutes asks first what may have changed, and does not take the reading',
		(minutes) => {
			const next = respond(probing, text('3 out'), minutesOn(minutes));
			expect(next && positionOf(next).step?.id).toBe('still-conditions');
			expect(next?.refusal?.id).toBe('time-passed');
			expect(next && openSeries(next.check).inner).toHaveLength(0);
			const asked = next && respond(next, yes, minutesOn(minutes + 1));
			expect(asked && positionOf(asked).step?.id).toBe(minutes < 720 ? 'probe-inner' : 'still-level');
		},
	);

	it('goes on at once where nothing was confirmed that could have changed', () => {
		const early = follow(freshDialogue(), northDeck, {until: 'arm-length'});
		const next = respond(early, text('233'), '2026-03-03T09:00:00Z');
		expect(next?.check.answers['arm-length']?.value).toBe(233);
	});

	it('has the question on the disk before it is answered, in plain lines too', async () => {
		const workbench = memoryWorkbench({}, clockFrom(minutesOn(40)));
		await converse(workbench, probing, linesOf(['3 out'], false));
		expect(workbench.memory.draft?.doubts).toEqual(['conditions']);
	});
});
