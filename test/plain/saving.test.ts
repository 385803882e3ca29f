import {describe, expect, it} from 'vitest';
import {at, run} from '../helpers/conversation.js';
import {words} from '../helpers/said.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';

const {faces} = words;
const full = {because: 'The disk is full.'};

describe('An answer that could not be saved', () => {
	const failures = () => ['The disk is full.'];

	it('is said to be not saved, and the same question is asked again', async () => {
		const {said, memory} = await run(['4.5', '4.5'], {piped: false, failures: failures(), from: at('guard-gap')});
		expect(said).toContain(faces.plain.notSavedAgain(full));
		expect(memory.draft?.answers['guard-gap']?.value).toBe(4.5);
	});

	it('ends a pipe', async () => {
		const {end, memory, left} = await run(['4.5', 'cannot'], {failures: failures(), from: at('guard-gap')});
		expect(end).toMatchObject({sentence: expect.stringContaining(faces.notSaved(full))});
		expect(left).toBe(1);
		expect(memory.draft).toBeUndefined();
	});

	it('is told apart from a refused answer, since it is no fault of the answers', async () => {
		const {end} = await run(['4.5'], {failures: failures(), from: at('guard-gap')});
		expect(end.kind).not.toBe('refused');
	});

	it('of the last question is filed once the disk has room', async () => {
		const {end} = await run(['y', 'y'], {piped: false, failures: failures(), from: at('next-check')});
		expect(end).toMatchObject({kind: 'finished', record: {outcome: 'complete'}});
	});
});

describe('A check that cannot be filed though its last answer is saved', () => {
	const filingFailures = () => ['The disk is full.', 'The disk is full.'];
	const from = at('next-check');

	it('is not said to lack the answer: any line files it once the disk has room', async () => {
		const {end, said, memory} = await run(['y', ''], {piped: false, filingFailures: filingFailures(), from});
		expect(said).toContain(faces.plain.notFiledAgain(full));
		expect(said).not.toContain(faces.plain.notSavedAgain(full));
		expect(end).toMatchObject({kind: 'finished', record: {outcome: 'complete'}});
		expect(memory.records).toHaveLength(1);
	});

	it('ends a pipe, and nothing is to be answered again', async () => {
		const {end, memory} = await run(['y', 'y'], {filingFailures: filingFailures(), from});
		expect(end).toEqual({kind: 'not-saved', sentence: faces.notSaved(full)});
		expect(memory.draft?.answers['next-check']?.value).toBe(true);
	});
});

describe('What went wrong after a check was filed', () => {
	const notice = {id: 'as-told', values: {sentence: 'It was not cleared.'}} as const;

	it.each(['with its last answer', 'as it is taken up again'])('goes with the record: %s', async (when) => {
		const from = when === 'with its last answer' ? at('next-check') : follow(freshDialogue(), northDeck);
		const {end} = await run(['y'], {afterFiling: notice, from});
		expect(end).toMatchObject({kind: 'finished', record: {outcome: 'complete'}, notice});
	});
});

describe('A check that came to its end but was never filed', () => {
	const complete = follow(freshDialogue(), northDeck);

	it('is filed as soon as it is taken up again', async () => {
		expect((await run([], {from: complete})).end).toMatchObject({kind: 'finished', record: {outcome: 'complete'}});
	});

	it('is tried again with an empty line while the disk is full', async () => {
		const failures = ['The disk is full.', 'The disk is full.'];
		const {end, said} = await run(['', ''], {piped: false, failures, from: complete});
		expect(said).toContain(faces.plain.notFiledAgain(full));
		expect(said).not.toContain(faces.plain.wanted.nothing);
		expect(end.kind).toBe('finished');
	});
});
