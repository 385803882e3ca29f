import {describe, expect, it} from 'vitest';
import {figuresOf} from '../../source/findings/figures.js';
import {detailLines} from '../../source/findings/radius-lines.js';
import {example} from './example.js';

const textOf = (figures: ReturnType<typeof figuresOf>): string =>
	detailLines(figures)
		.map((one) => (one.kind === 'line' ? one.text : ''))
		.join('\n');

describe('The smaller figures of a radius', () => {
	it('print the lean of the stylus no finer than the pull is known', () => {
		// 18.225 µm and 0.174° in the worked example, of a pull of 6.75 % ± 0.485 %: ± 1.3 µm and ± 0.0125°.
		expect(textOf(figuresOf(example()))).toContain('stylus leans 18 ± 1 µm (0.17 ± 0.01°)');
	});
});
