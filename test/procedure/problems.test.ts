import {describe, expect, it} from 'vitest';
import {procedure} from '../../source/procedure/index.js';
import type {Problem} from '../../source/procedure/problem.js';
import type {Step} from '../../source/procedure/step.js';
import {says} from '../../source/words/says.js';
import {factsWith} from '../helpers/facts.js';
import {words} from '../helpers/said.js';
import {troubles} from '../helpers/troubles.js';

const each = procedure.map((step) => [step.id, step] as const);

describe('A step that does not pass', () => {
	const problemsOf = (step: Step): Problem[] =>
		troubles.flatMap((values) => {
			const problem = step.verify?.(factsWith(values));
			return problem ? [problem] : [];
		});

	it.each(each)('%s says so in a sentence with at least one way out', (_id, step) => {
		for (const {ways, ...trouble} of problemsOf(step)) {
			expect(says.problem(trouble)).toMatch(/^[A-Z0-9'].*[.?]$/);
			expect(ways.length).toBeGreaterThan(0);
			for (const {id} of ways) expect(words.ways[id].length).toBeGreaterThan(5);
		}
	});

	// Impossible geometry cannot be gone past: no figure could be worked out.
	const never = [
		'arm-pivot-distance',
		'arm-offset',
		'arm-null-other',
		'radius-inner',
		'radius-outer',
		'radius-extra',
		'force-low',
		'force-high',
	];
	// Without the guard's mass, or without weighing again, the carried force is unknown or wrong.
	// And percent of what a floating arm carries, or of one that does not float, are no figures.
	const unknownForce = ['weighed', 'guard-account', 'gauge-unit', 'arm-afloat'];

	// With the bias off, or at a radius that is no middle one, there is nothing to measure.
	const biasAlone = ['bias-on', 'bias-radius-middle'];

	it.each(each.filter(([, {verify}]) => verify))(
		'%s offers reasons for going on, where going on makes sense',
		(id, step) => {
			if ([...never, ...unknownForce, ...biasAlone].includes(id)) expect(step.reasons ?? []).toEqual([]);
			else expect(step.reasons?.length).toBeGreaterThanOrEqual(2);
		},
	);

	it.each(each.filter(([, {input}]) => input.kind === 'ticks'))(
		'%s offers reasons too: a line may be left',
		(_id, step) => {
			expect(step.reasons?.length).toBeGreaterThanOrEqual(2);
		},
	);
});
