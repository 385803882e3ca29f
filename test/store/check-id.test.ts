import {describe, expect, it} from 'vitest';
import {isCheckId, monthOf, newCheckId} from '../../source/store/check-id.js';

describe('ids', () => {
	it('sort by start and have the form of a file name', () => {
		const early = newCheckId(new Date('2026-11-25T09:51:16.999Z'), () => 0.9999);
		const late = newCheckId(new Date('2026-11-25T09:51:17.000Z'), () => 0);
		expect(early < late).toBe(true);
		expect([early, late].every(isCheckId)).toBe(true);
		expect(monthOf(early)).toBe('2026-11');
	});

	it('differ where two checks start in the same second', () => {
		const start = new Date();
		expect(new Set(Array.from({length: 500}, () => newCheckId(start))).size).toBe(500);
	});
});
