import * as z from 'zod/mini';
import {crossFieldFaults} from './cross-field-faults.js';
import {type Document, documentSchema} from './document-schema.js';
import {shown, shownPath} from './shown.js';

export type {Document, PlaceName, ProbeRadius} from './document-schema.js';

/** What is wrong in a document, and at which key. */
export type Fault = {readonly path: string; readonly sentence: string};

export type Parsed =
	| {readonly ok: true; readonly document: Document}
	| {readonly ok: false; readonly faults: readonly Fault[]};

const valueAt = (json: unknown, path: readonly PropertyKey[]): unknown =>
	path.reduce<unknown>(
		(value, key) =>
			typeof value === 'object' && value !== null && Object.hasOwn(value, key) ? Reflect.get(value, key) : undefined,
		json,
	);

const shapeFaults = (json: unknown, issue: z.core.$ZodIssue): Fault[] => {
	if (issue.code !== 'unrecognized_keys') {
		const found = shown(valueAt(json, issue.path));
		return [{path: shownPath(issue.path), sentence: `Found ${found}. ${issue.message}`}];
	}
	return issue.keys.map((key) => ({
		path: shownPath([...issue.path, key]),
		sentence: `Found ${shown(valueAt(json, [...issue.path, key]))}. Wanted: no such key.`,
	}));
};

/**
 * Reads a compute document strictly. Faults name the path of the very key that is wrong, missing or unknown, and
 * say what was found and what is wanted; faults across fields are looked for only when the shape is sound.
 */
export const parseDocument = (json: unknown): Parsed => {
	const result = z.safeParse(documentSchema, json);
	const faults = result.success
		? crossFieldFaults(result.data)
		: result.error.issues.flatMap((issue) => shapeFaults(json, issue));
	if (faults.length > 0 || !result.success) return {ok: false, faults};
	return {ok: true, document: result.data};
};

/** The JSON Schema of the document (draft 2020-12). */
export const documentJsonSchema = (): object => ({
	title: 'armdrift compute document',
	...z.toJSONSchema(documentSchema, {io: 'input'}),
});
