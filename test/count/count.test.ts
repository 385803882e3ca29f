import {expect, it} from 'vitest';
import {countedWays} from './counted-ways.js';

// Limits set for a technician with one hand on the arm: common practice has none, so they are this program's own.
it('The way to the first reading is short: new arm and gauge, both known, and a re-check', () => {
	const {newArm, known, recheck} = countedWays();
	expect(newArm.screens).toBeLessThanOrEqual(25);
	expect(newArm.keys).toBeLessThanOrEqual(110);
	expect(known.screens).toBeLessThanOrEqual(14);
	expect(known.keys).toBeLessThanOrEqual(50);
	expect(recheck.keysBesideReadings).toBeLessThanOrEqual(20);
});
