import {describe, expect, it} from 'vitest';
import {detailLines} from '../../source/pages/radius-lines.js';
import {figuresOf} from '../../source/results/figures.js';
import {example} from '../results/example.js';

const textOf = (figures: ReturnType<typeof figuresOf>): string =>
	detailLines(figures)
		.map((one) => (one.kind === 'line' ? one.text : ''))
		.join('\n');

describe('The smaller figures of a radius', () => {
	it('print the lean of the stylus no finer than the pull is known', () => {
		// 14.74 µm and 0.1536° in the worked example, of a pull of 5.375 % ± 0.392 %: ± 1.07 µm and ± 0.0112°.
		expect(textOf(figuresOf(example()))).toContain('stylus leans 15 ± 1 µm (0.15 ± 0.01°)');
	});
});
