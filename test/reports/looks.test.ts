import {describe, expect, it} from 'vitest';
import {darkPalette, lightPalette, type Palette} from '../../source/reports/html/palette.js';
import {pageStyle} from '../../source/reports/html/style.js';
import {markSvg} from '../../source/reports/svg/shapes.js';
import {nasty, pages} from './support.js';

// WCAG 2.2, "relative luminance" and "contrast ratio" (definitions); 1.4.3 asks for 4.5 : 1 of text, 1.4.11 for 3 : 1 of
// what must be seen in a picture.
function luminance(colour: string): number {
	const [red = 0, green = 0, blue = 0] = [1, 3, 5]
		.map((start) => Number.parseInt(colour.slice(start, start + 2), 16) / 255)
		.map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
	return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
function contrast(one: string, other: string): number {
	const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((less, more) => less - more);
	return (light + 0.05) / (dark + 0.05);
}
/** Angle on the colour wheel, in degrees. */
function hueOf(colour: string): number {
	const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((start) => Number.parseInt(colour.slice(start, start + 2), 16));
	const turn = (Math.atan2(Math.sqrt(3) * (green - blue), 2 * red - green - blue) * 180) / Math.PI;
	return (turn + 360) % 360;
}

describe('Contrast, by the formula of WCAG', () => {
	it('has the ends that the standard states', () => {
		expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
		expect(contrast('#777777', '#777777')).toBe(1);
	});

	it.each<[string, Palette]>([
		['light', lightPalette],
		['dark', darkPalette],
	])('is enough for every text and every line of a picture, %s', (_name, palette) => {
		const {paper, band, bandEdge} = palette;
		for (const text of ['ink', 'soft', 'good', 'warn', 'bad'] as const)
			expect(contrast(palette[text], paper)).toBeGreaterThanOrEqual(4.5);
		for (const hue of ['good', 'warn', 'bad'] as const)
			expect(contrast(palette[hue], palette[`${hue}Ground`])).toBeGreaterThanOrEqual(4.5);
		expect(contrast(bandEdge, paper)).toBeGreaterThanOrEqual(4.5);
		// The middle of a band lies on it.
		expect(contrast(palette.ink, band)).toBeGreaterThanOrEqual(3);
	});

	it.each([lightPalette, darkPalette])('goes with the hues of the terminal: cyan, yellow, magenta', (palette) => {
		expect(hueOf(palette.good)).toBeCloseTo(180, -2);
		expect(Math.abs(hueOf(palette.good) - 180)).toBeLessThan(20);
		expect(Math.abs(hueOf(palette.warn) - 60)).toBeLessThan(25);
		expect(Math.abs(hueOf(palette.bad) - 300)).toBeLessThan(25);
	});
});

describe('A mark beside a verdict', () => {
	it('is another shape for each', () => {
		const all = (['good', 'usable', 'beyond', 'undecided', 'off-scale'] as const).map(markSvg);
		expect(new Set(all).size).toBe(5);
		for (const mark of all) expect(mark).not.toContain('<text');
	});
});

const rulesIn = (css: string): readonly string[] => css.match(/[^{}]+\{[^{}]*\}/g) ?? [];

describe.each(pages)('The page of %s', (_name, html) => {
	const css = /<style>(.*?)<\/style>/s.exec(html)?.[1] ?? '';
	const body = html.slice(html.indexOf('<body>'));

	it('draws its marks: no character is used for one', () => {
		expect(body).not.toMatch(/[✓✔✗✘✕✖▲△▼◄►●○◆]/u);
		for (const [, tone] of body.matchAll(/<p class="(?:notice |verdict )?(good|warn|bad)">(?!<svg class="mark")/g))
			expect.fail(`a line is told as ${tone} by its colour alone`);
	});

	it('keeps headings with what follows them, on paper', () => {
		const print = css.slice(css.indexOf('@media print'));
		const rule = rulesIn(print).find((one) => one.includes('break-after: avoid')) ?? '';
		for (const heading of ['h1', 'h2', 'h3', 'caption']) expect(rule).toMatch(new RegExp(`\\b${heading}\\b`));
		// Something stands under every heading.
		expect(body).not.toMatch(/<\/h[2-3]>\s*<\/(?:section|div)>/);
	});

	it('names arm and day at the head of every printed page', () => {
		const [arm = '', day = ''] = ['left', 'right'].map(
			(side) => new RegExp(`@top-${side} \\{ content: "((?:[\\dA-Za-z ]|\\\\[\\da-f]+ )*)"`).exec(css)?.[1],
		);
		const read = (text: string) =>
			text.replaceAll(/\\([\da-f]+) /g, (_whole, code: string) => String.fromCodePoint(Number.parseInt(code, 16)));
		expect(read(arm).length).toBeGreaterThan(3);
		expect(read(day)).toMatch(/^\d{1,2} \p{L}+ \d{4}$/u);
		expect(body).toContain(`<dd>${read(day)}</dd>`);
	});

	it('is dark where a screen asks for it, and on paper never', () => {
		expect(css).toContain('@media screen and (prefers-color-scheme: dark)');
		expect(css.match(/prefers-color-scheme/g)).toHaveLength(1);
		// Every colour stands in a palette.
		const own = css.replaceAll(/--\w+: #[\da-f]{6};/g, '').match(/#[\da-f]{3,8}\b/g) ?? [];
		expect(own.filter((colour) => colour !== lightPalette.soft)).toEqual([]);
	});
});

describe('A name at the head of a printed page', () => {
	it.each(Object.values({...nasty, ends: 'a"; } body { display: none } /* \\', close: '</style><script>'}))(
		'cannot end its string: %j',
		(arm) => {
			const css = pageStyle({arm, day: '4 May 2026'});
			expect(rulesIn(css)).toHaveLength(rulesIn(pageStyle({arm: 'a', day: 'b'})).length);
			expect(css).not.toContain('</');
			expect(/@top-left \{ content: "([^"]*)";/.exec(css)?.[1]).toMatch(/^(?:[\dA-Za-z ]|\\[\da-f]+ )+$/);
		},
	);
});

describe('Numbers and days', () => {
	it.each(pages)('have one style on the page of %s', (_name, html) => {
		const body = html.slice(html.indexOf('<main>'), html.indexOf('</main>'));
		const held = body
			.replaceAll(/<bdi>.*?<\/bdi>/gs, '')
			.replaceAll(/<(svg class="picture").*?<\/svg>|<[^>]*>/gs, '\n');
		// No line ends within a figure.
		expect(held.match(/\d (?:%|mm|mN|g|±)(?!\p{L})|± \d| ±\u00a0\d/gu) ?? []).toEqual([]);
		const text = body
			.replaceAll(/<bdi>.*?<\/bdi>/gs, '')
			.replaceAll(/<[^>]*>/g, '\n')
			.replaceAll('\u00a0', ' ');
		// A blank after ±, a unit before it, and days in words.
		expect(text.match(/±\d/g) ?? []).toEqual([]);
		// The drag is a part of the tracking force: it has no unit.
		expect(text.match(/(?<!0\.\d)\d ± (?!0\.05\b)/g) ?? []).toEqual([]);
		expect(text.match(/\b\d{4}-\d\d-\d\d\b/g) ?? []).toEqual([]);
		expect(text.match(/\d%/g) ?? []).toEqual([]);
		expect(text.match(/\u2212\d/g) ?? []).toEqual([]);
	});
});
