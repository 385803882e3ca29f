import {describe, expect, it} from 'vitest';
import type {Dialogue} from '../../source/check/dialogue.js';
import {reduce} from '../../source/check/reduce.js';
import {type View, viewOf} from '../../source/pages/view.js';
import {layoutOf} from '../../source/screens/layout.js';
import type {Look} from '../../source/screens/look.js';
import {beginning, words} from '../helpers/said.js';
import {northDeckWith} from '../helpers/sample-check.js';
import {follow, freshDialogue, goTo, type Script, say} from '../helpers/script.js';

const looks: readonly Look[] = [
	{color: true, unicode: true, screenReader: false},
	{color: false, unicode: false, screenReader: false},
];
// One line less than the terminal has.
const sizes = [
	{width: 80, height: 23},
	{width: 40, height: 19},
] as const;

const nulls = {'arm-length': '9 in', 'arm-pivot-distance': '', 'arm-pivot-way': 'nulls', 'arm-null-radius': '66'};
const cases: readonly (readonly [until: string, answers: Script['answers'], typed: string])[] = [
	['arm-null-radius', {...nulls, 'arm-offset': '24', 'arm-pivot-way': 'offset'}, '66'],
	['arm-null-other', nulls, '120.9'],
	['arm-null-other', {...nulls, 'arm-offset': '22'}, '120.9'],
];

/** Arms of an earlier version, which was asked the offset of every arm: it is kept, and can be corrected. */
const kept: readonly (readonly [answers: Script['answers'], typed: string])[] = [
	[{'arm-length': '9 in', 'arm-pivot-distance': '210.4'}, '24'],
	// The longest: the overhang is unusual.
	[{'arm-length': '9 in', 'arm-pivot-distance': '240'}, '0'],
];

/** The list of steps leads to the offset of such an arm. */
function atOffset(answers: Script['answers']): Dialogue {
	const blank = freshDialogue();
	const offset = {'arm-offset': {value: 20, typed: '20'}};
	const check = reduce(blank.check, {type: 'fill', answers: offset, at: blank.check.startedAt});
	const here = follow({...blank, check}, northDeckWith(answers), {until: 'tools-name'});
	return say(here, goTo('arm', 'arm-offset'));
}

describe('The published layouts beside an arm', () => {
	it.each(cases)('stand on one page with the question %s (%j, %s)', (until, answers, typed) =>
		expectOnOnePage(viewOf(follow(freshDialogue(), northDeckWith(answers), {until}), typed)),
	);

	it.each(kept)('stand on one page with the offset that an earlier version kept (%j, %s)', (answers, typed) =>
		expectOnOnePage(viewOf(atOffset(answers), typed)),
	);
});

function expectOnOnePage(view: View): void {
	for (const size of sizes)
		for (const look of looks) {
			const at = (page: number) => layoutOf({view, ...size, page, isWhy: false, notice: '', look});
			const {head, body, foot, controlRows, pages} = at(0);
			// The smallest screen has seven lines for what is looked at: there the layouts are a page further.
			expect(pages).toBeLessThanOrEqual(size.width < 60 ? 3 : 1);
			expect(head.length + body.length + foot.length + controlRows).toBeLessThanOrEqual(size.height);
			const all = Array.from({length: pages}, (_, page) => at(page).body).flat();
			const read = [...head, ...all].map((row) => row.text).join(' ');
			expect(read).toContain(view.ask);
			const {cells, forInformation} = words.pages.geometry;
			const thisArm = cells.name({name: undefined, nulls: null, overhangMm: null});
			const onlyInformation = beginning(forInformation({outermostMm: 146, innermostMm: 60}));
			for (const wanted of [thisArm, 'Loefgren A', 'Loefgren B', 'Stevenson', onlyInformation])
				expect(read).toContain(wanted);
		}
}
