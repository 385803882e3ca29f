import {describe, expect, test} from 'vitest';
import {compute} from '../../source/results/compute.js';
import {parseDocument} from '../../source/results/document.js';
import {type ModelDocument, model} from './model.js';
import {differences, toAMillionth, toSixDigits} from './model-differences.js';
import {bestFactor, type Line, worstAt} from './model-envelope.js';
import {studentQuantile} from './model-student-t.js';
import example from './printed-example.json' with {type: 'json'};
import {randomDocuments} from './random-documents.js';

const codes = [
	'off-scale',
	'moved',
	'tilt-explains',
	'not-level',
	'pull-and-friction',
	'constant-pull',
	'spring-pull',
	'runaway-pull',
	'friction',
	'friction-local',
	'no-pattern',
	'bias-idle',
	'bias-off-scale',
	'bias-rubs',
	'bias-uneven',
	'playable-with-bias',
	'undecided',
	'sound',
];

const sample = randomDocuments(400);

const comparable = (output: {findings: readonly {code: string}[]}): unknown => ({
	...output,
	findings: output.findings.map(({code}) => code),
});

describe('the model by itself', () => {
	test('prints every number of the worked example of the JSON document', () => {
		const output = model(example.document as ModelDocument);
		expect(differences(comparable(output), comparable(example.printed), toSixDigits)).toEqual([]);
	});

	test('knows the quantiles of Student’s t that have a closed form', () => {
		const p = 4 * 0.975 * 0.025;
		expect(studentQuantile(1)).toBeCloseTo(Math.tan(0.475 * Math.PI), 10);
		expect(studentQuantile(2)).toBeCloseTo((2 * 0.475) / Math.sqrt(p / 2), 10);
		const root = Math.sqrt(p);
		expect(studentQuantile(4)).toBeCloseTo(2 * Math.sqrt(Math.cos(Math.acos(root) / 3) / root - 1), 10);
		expect(studentQuantile(1e6)).toBeCloseTo(1.9599663569, 9);
	});

	test('finds no better bias factor by walking in small steps', () => {
		const lines: Line[] = [
			{offset: -9, slope: 5},
			{offset: -12, slope: 3},
			{offset: 1, slope: 0.5},
		];
		const best = worstAt(lines, bestFactor(lines));
		for (let k = 0; k <= 5; k += 0.001) {
			expect(worstAt(lines, k)).toBeGreaterThanOrEqual(best - 2e-9);
		}
	});

	test('takes the bias factor nearest 1 where many are equally good', () => {
		const lines: Line[] = [
			{offset: 4, slope: 0},
			{offset: -8, slope: 4},
		];
		expect(bestFactor(lines)).toBeCloseTo(1, 8);
		expect(bestFactor([...lines, {offset: -9, slope: 4}])).toBeCloseTo(1.25, 8);
	});
});

describe('the random documents', () => {
	test('bring up every finding', () => {
		const seen = new Set(sample.flatMap((document) => model(document).findings.map(({code}) => code)));
		expect(codes.filter((code) => !seen.has(code))).toEqual([]);
	});

	test('are all valid', () => {
		for (const document of sample) {
			const parsed = parseDocument(document);
			expect(parsed.ok ? [] : parsed.faults, JSON.stringify(document)).toEqual([]);
		}
	});
});

describe('the program', () => {
	test.each(sample.map((document, index) => [index + 1, document] as const))(
		'agrees with the model on random document %i',
		(_seed, document) => {
			const parsed = parseDocument(document);
			if (!parsed.ok) {
				throw new Error(`not taken as valid: ${JSON.stringify(parsed.faults)}\n${JSON.stringify(document)}`);
			}
			const printed: ReturnType<typeof compute> = JSON.parse(JSON.stringify(compute(parsed.document)));
			const parted = differences(comparable(model(document)), comparable(printed), toAMillionth);
			expect(parted, `path: model | program, of ${JSON.stringify(document)}`).toEqual([]);
		},
	);
});
