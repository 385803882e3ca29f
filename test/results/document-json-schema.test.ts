import {describe, expect, it} from 'vitest';
import {documentJsonSchema} from '../../source/results/document.js';
import {words} from '../helpers/said.js';

type Node = {readonly [key: string]: unknown};
const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && !Array.isArray(value);

const nodesOf = (value: unknown, path = ''): [string, Node][] => {
	if (!isNode(value)) return [];
	const children = isNode(value.properties) ? Object.entries(value.properties) : [];
	const here: [string, Node] = [path, value];
	return [
		here,
		...children.flatMap(([key, child]) => nodesOf(child, `${path}.${key}`)),
		...nodesOf(value.items, `${path}[]`),
	];
};

describe('the JSON Schema of the document', () => {
	const nodes = nodesOf(documentJsonSchema(words.documents.title, words.documents.description));

	it('describes every key in words', () => {
		expect(nodes.length).toBeGreaterThan(50);
		expect(nodes.filter(([, node]) => typeof node.description !== 'string').map(([path]) => path)).toEqual([]);
	});

	it('knows every key: no group takes others', () => {
		const groups = nodes.filter(([, node]) => node.type === 'object');
		expect(groups.map(([, node]) => node.additionalProperties)).toEqual(groups.map(() => false));
	});

	it('asks for what is required', () => {
		const required = Object.fromEntries(nodes.map(([path, node]) => [path, node.required]));
		expect(required).toMatchObject({
			'': ['arm', 'gauge', 'trackingForce', 'probe'],
			'.arm': ['effectiveLengthMm', 'pivotDistanceMm', 'loading'],
			'.gauge': ['unit', 'step', 'topOfScale'],
			'.trackingForce': ['playingMn', 'scaleReadingMn', 'guard'],
			'.probe[]': ['place', 'radiusMm', 'rounds'],
			'.bias': ['device'],
		});
	});
});
