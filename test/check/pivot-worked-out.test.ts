import {describe, expect, it} from 'vitest';
import published from '../../shared/check-values/arm-geometry.json' with {type: 'json'};
import {type Dialogue, positionOf} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {viewOf} from '../../source/pages/view.js';
import {compute} from '../../source/results/compute.js';
import {parseDocument} from '../../source/results/document.js';
import {documentOfCheck} from '../../source/results/document-of-check.js';
import {profilesWith} from '../../source/results/profiles.js';
import {linesFor, run} from '../helpers/conversation.js';
import {inOrder, words} from '../helpers/said.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, goTo, type Script, say, text, waysOut} from '../helpers/script.js';

// Nine inches after Loefgren A, as the table prints it: offset, pivot distance and both null radii of one arm.
const [row] = published.arms;
if (row?.rule !== 'Loefgren A') throw new Error('another table');
const [inner = 0, outer = 0] = row.nullsMm;
const length = {'arm-length': '9 in'};
const byNulls: Script['answers'] = {
	...length,
	'arm-pivot-distance': '',
	'arm-pivot-way': 'nulls',
	'arm-null-radius': String(inner),
	'arm-null-other': String(outer),
};
const byOffset: Script['answers'] = {
	...length,
	'arm-pivot-distance': '',
	'arm-offset': String(row.offsetDeg),
	'arm-pivot-way': 'offset',
	'arm-null-radius': String(outer),
};

const at = (until: string, answers: Script['answers']) => follow(freshDialogue(), northDeckWith(answers), {until});
const wholeOf = (answers: Script['answers']) => follow(freshDialogue(), northDeckWith(answers));
const documentAt = ({check}: Dialogue) => {
	const found = documentOfCheck(check);
	if (!found.ok) throw new Error(found.missing);
	return found.document;
};
const stepAt = (dialogue: Dialogue) => positionOf(dialogue).step?.id;
const waysAt = (dialogue: Dialogue) => {
	const {stuck, mendable} = positionOf(dialogue);
	if (!stuck) return [];
	const prompt = promptOf(mendable ? say(dialogue, [waysOut]) : dialogue);
	return prompt.kind === 'choice'
		? prompt.options.map(({label}) => (label.id === 'way' ? label.values.way : label.id))
		: [];
};
const shownAt = (dialogue: Dialogue, entry = '') =>
	viewOf(dialogue, entry)
		.shown.map((one) => (one.kind === 'line' ? one.text : one.caption))
		.join('\n');

describe('A pivot distance that was left empty', () => {
	const workedOut = (typedDeg: number | undefined) =>
		words.pages.geometry.workedOut({
			pivotDistanceMm: row.pivotMm,
			overhangMm: 228.6 - row.pivotMm,
			offsetDeg: row.offsetDeg,
			typedDeg,
		});

	it.each([
		['both null radii', byNulls],
		['the offset angle and one null radius', byOffset],
	])('is the one of the table, from %s', (_way, answers) => {
		const document = documentAt(wholeOf(answers));
		// The table's tolerance: null radii to 0.001 mm, offset to 0.0001°.
		expect(Math.abs(document.arm.pivotDistanceMm - row.pivotMm)).toBeLessThanOrEqual(0.001);
		expect(parseDocument(JSON.parse(JSON.stringify(document)))).toMatchObject({ok: true});
	});

	it('ends with the same figures as if it had been typed', () => {
		// 230² − 68 · 117 = 212², so here both are the same to the last digit.
		const nulls = {...byNulls, 'arm-length': '230', 'arm-null-radius': '68', 'arm-null-other': '117'};
		const measured = {'arm-length': '230', 'arm-pivot-distance': '212'};
		expect(compute(documentAt(wholeOf(nulls)))).toEqual(compute(documentAt(wholeOf(measured))));
	});

	it('is asked for line by line as well', async () => {
		const {end, memory} = await run(linesFor(northDeckWith(byNulls)));
		expect(end).toMatchObject({kind: 'finished', record: {outcome: 'complete'}});
		expect(memory.records[0]?.check.answers['arm-pivot-distance']?.value).toBeNull();
	});

	it('shows at once the pivot distance, the overhang and the offset that come out', () => {
		// As the table prints it, to the decimals that are shown: 210.4 mm, 18.2 mm and 24.13°.
		const came = workedOut(undefined);
		for (const printed of ['210.4 mm', '18.2 mm', '24.13°']) expect(came).toContain(printed);
		expect(shownAt(at('arm-null-other', byNulls), String(outer))).toContain(came);
		expect(shownAt(at('arm-null-radius', byOffset), String(outer))).toContain(came);
		// And again at the question after it: line by line nothing is shown while it is typed.
		expect(shownAt(at('playing-force', byNulls))).toContain(came);
		expect(shownAt(at('playing-force', {}))).toBe('');
	});

	it('says so where both null radii belong to another offset than was typed', () => {
		const shownWith = (offset: string) => {
			const typed = at('arm-null-radius', {...byOffset, 'arm-offset': offset});
			const nulls = say(typed, [...goTo('arm', 'arm-pivot-way'), choose('nulls')]);
			return shownAt(follow(nulls, northDeckWith(byNulls), {until: 'arm-null-other'}), String(outer));
		};
		expect(shownWith('22')).toContain(workedOut(22));
		expect(workedOut(22)).toContain('22°');
		expect(shownWith('24.1')).toContain(workedOut(undefined));
	});

	it('leads to no question more where it was typed', () => {
		const asked: (string | undefined)[] = [];
		follow(freshDialogue(), northDeck, {seen: (dialogue) => asked.push(stepAt(dialogue))});
		expect(asked.filter((id) => id?.startsWith('arm-null') || id === 'arm-pivot-way' || id === 'arm-offset')).toEqual(
			[],
		);
		expect(asked[asked.indexOf('arm-pivot-distance') + 1]).toBe('playing-force');
	});

	it('can be typed after all, and then counts as typed', () => {
		const changed = say(wholeOf(byNulls), [...goTo('arm', 'arm-pivot-distance'), text('212')]);
		expect(documentAt(changed).arm.pivotDistanceMm).toBe(212);
		expect(positionOf(changed).progress.visible.map(({id}) => id)).not.toContain('arm-null-other');
		expect(stepAt(changed)).toBe('radius-inner');
	});

	it('changes with a corrected null radius, and the probe radii are looked at again', () => {
		const changed = say(at('verdict', byNulls), [...goTo('arm', 'arm-null-other'), text('118')]);
		expect(documentAt(changed).arm.pivotDistanceMm).toBeCloseTo(Math.sqrt(228.6 ** 2 - inner * 118), 9);
		expect(stepAt(changed)).toBe('radius-inner');
		expect(stepAt(say(changed, [text('68'), text('136')]))).toBe('verdict');
	});

	it('belongs to the profile of the arm, with what it is worked out from', () => {
		const known = profilesWith([], at('wires', byNulls).check, '2026-03-02T12:00:00Z');
		const arm = known.find(({kind}) => kind === 'arm');
		expect(arm).toMatchObject({
			kind: 'arm',
			answers: {'arm-pivot-way': {value: 'nulls'}, 'arm-null-other': {value: outer}},
		});
		const again = follow(
			freshDialogue(arm ? [arm] : []),
			northDeckWith({'arm-profile': arm?.id ?? '', 'arm-name': '', 'arm-null-radius': ''}),
		);
		expect(documentAt(again).arm).toEqual(documentAt(wholeOf(byNulls)).arm);
	});
});

describe('What cannot give a pivot distance', () => {
	it('an offset angle that is not known: type it, take both null radii, or measure', () => {
		const stuck = say(at('arm-offset', byOffset), [text('-')]);
		expect(stepAt(stuck)).toBe('arm-offset');
		expect(waysAt(stuck)).toEqual(['type-offset', 'from-both-nulls', 'measure-pivot']);
		expect(stepAt(say(stuck, [waysOut, choose('way-0'), text('24')]))).toBe('arm-null-radius');
		expect(stepAt(say(stuck, [waysOut, choose('way-1'), text('66')]))).toBe('arm-null-other');
		expect(stepAt(say(stuck, [waysOut, choose('way-2'), text('210.4')]))).toBe('playing-force');
	});

	it('null radii of no arm', () => {
		const far = {...byNulls, 'arm-length': '120', 'arm-null-radius': '130'};
		const stuck = say(at('arm-null-other', far), [text('125')]);
		expect(stepAt(stuck)).toBe('arm-null-other');
		expect(shownAt(stuck)).toContain(words.problems['no-such-arm']({}));
		expect(waysAt(stuck)).toEqual(['correct-other-null', 'correct-null', 'correct-length', 'measure-pivot']);
		expect(stepAt(say(stuck, [waysOut, choose('way-3')]))).toBe('arm-pivot-distance');
	});

	it('a pivot distance that nobody would believe if it were typed', () => {
		// √(120² − 66 · 125) is 78.4 mm, √(120² − 66 · 120) is 80.5 mm.
		const short = {...byNulls, 'arm-length': '120', 'arm-null-radius': '66'};
		const stuck = say(at('arm-null-other', short), [text('125')]);
		const problem = words.problems['pivot-not-believable']({pivotMm: 78.4, leastMm: 80, mostMm: 450});
		expect(shownAt(stuck)).toContain(problem);
		expect(problem).toMatch(inOrder('78.4 mm', '80', '450 mm'));
		expect(stepAt(say(stuck, [text('120')]))).toBe('playing-force');
	});
});
