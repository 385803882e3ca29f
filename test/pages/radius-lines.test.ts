import {describe, expect, it} from 'vitest';
import {detailLines} from '../../source/pages/radius-lines.js';
import {line} from '../../source/pages/shown-lines.js';
import {figuresOf} from '../../source/results/figures.js';
import {isMeasured} from '../../source/results/figures-types.js';
import {words} from '../helpers/said.js';
import {example} from '../results/example.js';

describe('The smaller figures of a radius', () => {
	it('print the lean of the stylus no finer than the pull is known', () => {
		const figures = figuresOf(example());
		const [inner] = figures.probe.filter(isMeasured);
		if (!inner) throw new Error('the example has an inner radius');
		// 14.74 µm and 0.1536° in the worked example, of a pull of 5.375 % ± 0.392 %: ± 1.07 µm and ± 0.0112°.
		const leans = {micrometres: [14.74, 1.07], degrees: [0.1536, 0.0112]} as const;
		expect(detailLines(figures)[0]).toEqual(line(words.pages.verdict.details({figures: inner, leans}), 'aside'));
	});
});
