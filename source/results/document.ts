import * as z from 'zod/mini';
import type {Said} from '../said.js';
import {escaped} from '../visible-text.js';
import {type CrossFieldFaults, crossFieldFaults} from './cross-field-faults.js';
import {type Document, type DocumentKey, documentSchema} from './document-schema.js';

export type {Document, PlaceName, ProbedRadius} from './document-schema.js';

/** What may be wrong with a document, in the units of its keys. `found` is any JSON value, or undefined. */
export type FaultValues = CrossFieldFaults & {
	/** `oneOf` where the key takes one of some values only. */
	shape: {readonly found: unknown; readonly key: DocumentKey; readonly oneOf: readonly unknown[]};
	'unknown-key': {readonly found: unknown};
};

/** What is wrong in a document, and at which key. */
export type Fault = {readonly path: string} & Said<FaultValues>;

export type Parsed =
	| {readonly ok: true; readonly document: Document}
	| {readonly ok: false; readonly faults: readonly Fault[]};

const valueAt = (json: unknown, path: readonly PropertyKey[]): unknown =>
	path.reduce<unknown>(
		(value, key) =>
			typeof value === 'object' && value !== null && Object.hasOwn(value, key) ? Reflect.get(value, key) : undefined,
		json,
	);

/** A path in a JSON document, such as `probe[0].rounds[1].innerLimit`; keys that would confuse it stand in quotes. */
const pathText = (path: readonly PropertyKey[]): string =>
	path.reduce<string>((sofar, step) => {
		if (typeof step === 'number') return `${sofar}[${step}]`;
		const key = String(step);
		if (!/^[^\s.:[\]"\\\p{C}]+$/u.test(key)) return `${sofar}[${escaped(JSON.stringify(key))}]`;
		return sofar === '' ? key : `${sofar}.${key}`;
	}, '');

// Shapes are wrong at keys that the schema knows.
const keyAt = (path: readonly PropertyKey[]): DocumentKey =>
	path
		.map((step) => (typeof step === 'number' ? '[]' : `.${String(step)}`))
		.join('')
		.slice(1) as DocumentKey;

const shapeFaults = (json: unknown, issue: z.core.$ZodIssue): Fault[] => {
	const found = (path: readonly PropertyKey[]) => valueAt(json, path);
	if (issue.code === 'unrecognized_keys')
		return issue.keys.map((key) => {
			const path = [...issue.path, key];
			return {path: pathText(path), id: 'unknown-key', values: {found: found(path)}};
		});
	const oneOf = issue.code === 'invalid_value' ? issue.values : [];
	const values = {found: found(issue.path), key: keyAt(issue.path), oneOf};
	return [{path: pathText(issue.path), id: 'shape', values}];
};

/**
 * Reads a compute document strictly. Faults name the path of the very key that is wrong, missing or unknown, with what
 * was found there; faults across fields are looked for only when the shape is sound.
 */
export const parseDocument = (json: unknown): Parsed => {
	const result = z.safeParse(documentSchema, json);
	const faults = result.success
		? crossFieldFaults(result.data)
		: result.error.issues.flatMap((issue) => shapeFaults(json, issue));
	if (faults.length > 0 || !result.success) return {ok: false, faults};
	return {ok: true, document: result.data};
};

type JsonSchema = {
	readonly properties?: Readonly<Record<string, JsonSchema>>;
	readonly items?: JsonSchema;
	readonly enum?: readonly unknown[];
	readonly anyOf?: unknown;
	readonly description?: string;
};
type Describe = (key: DocumentKey, oneOf: readonly unknown[]) => string;

function described({anyOf, ...schema}: JsonSchema, key: string, describe: Describe): JsonSchema {
	const {properties, items} = schema;
	const below = (name: string): string => (key === '' ? name : `${key}.${name}`);
	return {
		...schema,
		...(properties && {
			properties: Object.fromEntries(
				Object.entries(properties).map(([name, one]) => [name, described(one, below(name), describe)]),
			),
		}),
		...(items && {items: described(items, `${key}[]`, describe)}),
		description: describe(key as DocumentKey, schema.enum ?? []),
		...(anyOf === undefined ? {} : {anyOf}),
	};
}

/**
 * The JSON Schema of the document (draft 2020-12).
 *
 * @param describe what is wanted at a key, and of which values it takes one
 */
export const documentJsonSchema = (title: string, describe: Describe): object => ({
	title,
	...described(z.toJSONSchema(documentSchema, {io: 'input'}) as JsonSchema, '', describe),
});
