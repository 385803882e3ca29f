import {mkdtempSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {Readable} from 'node:stream';
import {afterAll, describe, expect, it} from 'vitest';
import {type ComputeOptions, printedOf, runCompute} from '../../source/commands/compute.js';
import {documentJsonSchema} from '../../source/results/document.js';
import {words} from '../helpers/said.js';
import {example} from '../results/example.js';

const folder = mkdtempSync(join(tmpdir(), 'compute-'));
afterAll(() => rmSync(folder, {recursive: true}));

const fileWith = (name: string, text: string): string => {
	const path = join(folder, name);
	writeFileSync(path, text);
	return path;
};

const run = async (options: Partial<ComputeOptions> = {}, typed = '') => {
	const printed = {stdout: '', stderr: ''};
	const output = (name: keyof typeof printed): ComputeOptions['stdout'] => ({
		write: (text, done) => {
			printed[name] += text;
			done();
		},
	});
	const stdin = Readable.from(typed === '' ? [] : [Buffer.from(typed)]);
	const status = await runCompute({stdin, stdout: output('stdout'), stderr: output('stderr'), ...options});
	return {status, ...printed};
};

const linesOf = (text: string): string[] => text.split('\n').slice(0, -1);

describe('compute', () => {
	it('prints figures and findings of a file as one JSON document', async () => {
		const {status, stdout, stderr} = await run({file: fileWith('good.json', JSON.stringify(example()))});
		expect({status, stderr}).toEqual({status: 0, stderr: ''});
		expect(JSON.parse(stdout)).toEqual(JSON.parse(JSON.stringify(printedOf(example()))));
	});

	it('keeps the order of keys, findings last', () => {
		expect(Object.keys(printedOf(example()))).toEqual([
			'scaleFactor',
			'carriedMn',
			'level',
			'clearance',
			'zero',
			'probe',
			'closing',
			'verdict',
			'atWorst',
			'betweenRadii',
			'bias',
			'findings',
		]);
		expect(printedOf(example()).findings.map((finding) => Object.keys(finding))).toEqual(
			[1, 2, 3, 4].map(() => ['code', 'places', 'who', 'text']),
		);
	});

	it.each([undefined, '-'])('reads standard input where the file is %j', async (file) => {
		const {status, stdout} = await run({file}, `\uFEFF${JSON.stringify(example())}\n`);
		expect(status).toBe(0);
		expect(JSON.parse(stdout).verdict).toBe('beyond');
	});

	it('prints the JSON Schema and reads nothing', async () => {
		const {status, stdout} = await run({schema: true, file: '/no/such/file'});
		expect(status).toBe(0);
		expect(JSON.parse(stdout)).toEqual(
			JSON.parse(JSON.stringify(documentJsonSchema(words.documents.title, words.documents.description))),
		);
	});

	it('computes the document of a saved check', async () => {
		const {status, stdout} = await run({checkDocument: () => example()});
		expect(status).toBe(0);
		expect(JSON.parse(stdout).carriedMn).toBe(21);
	});
});

describe('compute with bad input', () => {
	it('stops reading an input without an end', async () => {
		let pieces = 0;
		const endless = Readable.from(
			(function* () {
				for (; pieces < 1000; pieces++) yield Buffer.alloc(1024 ** 2, ' ');
			})(),
		);
		const {status, stderr} = await run({stdin: endless});
		expect([status, stderr]).toEqual([2, `${words.commands.compute.tooLarge({name: '-', mostMb: 16})}\n`]);
		expect(pieces).toBeLessThan(40);
		const device = await run({file: '/dev/zero'});
		expect(device.stderr).toBe(`${words.commands.compute.tooLarge({name: '/dev/zero', mostMb: 16})}\n`);
	});

	const said = (at: string, sentence: string): string => words.commands.compute.fault({at, sentence});

	it('prints a line for each fault, and nothing on standard output', async () => {
		const {gauge, ...rest} = example();
		const {status, stdout, stderr} = await run({}, JSON.stringify({...rest, gauge: {...gauge, step: -1, odd: 2}}));
		expect({status, stdout}).toEqual({status: 2, stdout: ''});
		expect(linesOf(stderr)).toEqual([
			said('gauge.step', words.documents.faults.shape({found: -1, key: 'gauge.step', oneOf: []})),
			said('gauge.odd', words.documents.faults['unknown-key']({found: 2})),
		]);
	});

	it.each([
		['', 2],
		['{"arm": ', 2],
		['[]', 2],
	])('refuses %j in one line that begins with -', async (typed, status) => {
		const result = await run({file: '-'}, typed);
		expect(result).toMatchObject({status, stdout: ''});
		expect(linesOf(result.stderr)).toEqual([expect.stringMatching(/^-: /)]);
	});

	it('begins with the name of a file that is not JSON', async () => {
		const file = fileWith('not.json', 'arm: 233\n\u001b[2J');
		const {status, stdout, stderr} = await run({file});
		expect({status, stdout}).toEqual({status: 2, stdout: ''});
		expect(linesOf(stderr)).toEqual([words.commands.compute.notJson({name: file, line: 1})]);
		expect(stderr.trimEnd()).not.toMatch(/\p{Cc}/u);
	});

	it('begins with the name of a file that is not there or cannot be read, its control characters escaped', async () => {
		const missing = await run({file: '/no/\u001b[31msuch.json'});
		expect(missing).toEqual({
			status: 2,
			stdout: '',
			stderr: `${words.commands.compute.noFile({name: '/no/\\u001b[31msuch.json'})}\n`,
		});
		const directory = await run({file: folder});
		expect(directory).toMatchObject({status: 1, stdout: ''});
		expect(linesOf(directory.stderr)).toEqual([expect.stringMatching(`^${folder}: `)]);
	});

	it('says in one sentence what it wants when a terminal is its standard input', async () => {
		const stdin = Object.assign(Readable.from([]), {isTTY: true});
		const {status, stdout, stderr} = await run({stdin});
		expect({status, stdout}).toEqual({status: 2, stdout: ''});
		expect(linesOf(stderr)).toHaveLength(1);
	});

	it('prints no null in place of a figure that overflows', async () => {
		const {trackingForce, ...rest} = example();
		const huge = {...rest, trackingForce: {...trackingForce, playingMn: 1e-300, scaleReadingMn: 1e300}};
		const {status, stdout, stderr} = await run({}, JSON.stringify(huge));
		expect({status, stdout}).toEqual({status: 2, stdout: ''});
		expect(linesOf(stderr)).toHaveLength(1);
	});

	it('reports that the result could not be written', async () => {
		const stdout: ComputeOptions['stdout'] = {write: (_text, done) => done(new Error('EPIPE'))};
		expect((await run({stdout}, JSON.stringify(example()))).status).toBe(1);
	});
});
