import {createReadStream} from 'node:fs';
import {Shelf} from '../desk/shelf.js';
import {compute} from '../results/compute.js';
import {type Document, documentJsonSchema, parseDocument} from '../results/document.js';
import {documentOfCheck} from '../results/document-of-check.js';
import {dataDirectory} from '../store/data-directory.js';
import {codeOf} from '../store/describe-fault.js';
import {lineOfFault} from '../store/json-fault.js';
import {EXIT} from '../terminal/exit-paths.js';
import {escaped} from '../visible-text.js';
import {documentWords, faultText} from '../words/documents.js';
import {worded} from '../words/finding-text.js';
import {words} from '../words/index.js';
import {orRefuse, refuseWith} from './print.js';

const say = words.commands.compute;

export type ComputeOptions = {
	/** File to read; `-` or nothing for standard input. */
	readonly file?: string | undefined;
	/** Print the JSON Schema of the document, and read nothing. */
	readonly schema?: boolean | undefined;
	/** Gives the document of a saved check, in place of a file. */
	readonly checkDocument?: (() => unknown) | undefined;
	readonly stdin: AsyncIterable<string | Uint8Array> & {readonly isTTY?: boolean | undefined};
	readonly stdout: Output;
	readonly stderr: Output;
};

type Output = {readonly write: (text: string, done: (error?: Error | null) => void) => unknown};

/** What to print where; nothing goes to standard output beside a result. */
type Result = {readonly status: number; readonly out?: string; readonly faults?: readonly string[]};

type Source = {readonly name: string; readonly json: unknown};

const isRefusal = (read: Source | Result): read is Result => 'status' in read;

const refusal = (status: number, ...faults: string[]): Result => ({status, faults});

/** No document comes near this; an input without an end would fill the memory. */
const LARGEST_MB = 16;

/** @returns undefined where it is larger than any document */
const textOf = async (file: string, stdin: ComputeOptions['stdin']): Promise<string | undefined> => {
	const chunks: Uint8Array[] = [];
	let bytes = 0;
	for await (const chunk of file === '-' ? stdin : createReadStream(file)) {
		chunks.push(typeof chunk === 'string' ? Buffer.from(chunk) : chunk);
		bytes += chunk.length;
		if (bytes > LARGEST_MB * 1024 ** 2) return;
	}
	return Buffer.concat(chunks).toString('utf8');
};

const readJson = async (file: string, stdin: ComputeOptions['stdin']): Promise<Source | Result> => {
	const name = escaped(file);
	let text: string | undefined;
	try {
		text = await textOf(file, stdin);
	} catch (error) {
		const code = codeOf(error);
		if (code === 'EISDIR') return refusal(EXIT.cannotReadOrWrite, say.folder({name}));
		return code === 'ENOENT'
			? refusal(EXIT.usage, say.noFile({name}))
			: refusal(EXIT.cannotReadOrWrite, say.notRead({name, code}));
	}
	if (text === undefined) return refusal(EXIT.usage, say.tooLarge({name, mostMb: LARGEST_MB}));
	const json = text.replace(/^\uFEFF/, '');
	try {
		return {name, json: JSON.parse(json)};
	} catch (error) {
		return refusal(EXIT.usage, say.notJson({name, line: lineOfFault(json, error)}));
	}
};

// JSON has no infinity and would print null in its place, silently.
const onlyFinite = (_key: string, value: unknown): unknown => {
	if (typeof value === 'number' && !Number.isFinite(value)) throw new RangeError('not a finite number');
	return value;
};

/** Its line breaks are those of the layout: one within a text is escaped. */
const asJson = (value: unknown): string =>
	`${JSON.stringify(value, onlyFinite, 2).split('\n').map(escaped).join('\n')}\n`;

/** What is printed of a document: its figures, and its findings in words. */
export function printedOf(document: Document) {
	const {findings, ...figures} = compute(document);
	const told = findings.map(worded).map(({code, places, who, text}) => ({code, places, who, text}));
	return {...figures, findings: told};
}

const computed = ({name, json}: Source): Result => {
	const parsed = parseDocument(json);
	if (!parsed.ok) {
		const faults = parsed.faults.map((fault) =>
			say.fault({at: fault.path === '' ? name : fault.path, sentence: faultText(fault)}),
		);
		return refusal(EXIT.usage, ...faults);
	}
	try {
		return {status: EXIT.done, out: asJson(printedOf(parsed.document))};
	} catch (error) {
		if (!(error instanceof RangeError)) throw error;
		return refusal(EXIT.usage, say.noFigure({name}));
	}
};

const resultOf = async ({file, schema, checkDocument, stdin}: ComputeOptions): Promise<Result> => {
	if (schema)
		return {status: EXIT.done, out: asJson(documentJsonSchema(documentWords.title, documentWords.description))};
	if (checkDocument) return computed({name: '--id', json: await checkDocument()});
	if (file === undefined && stdin.isTTY) {
		return refusal(EXIT.usage, say.nameFile);
	}
	const read = await readJson(file ?? '-', stdin);
	return isRefusal(read) ? read : computed(read);
};

const written = (output: Output, text: string): Promise<boolean> =>
	new Promise((resolve) => {
		output.write(text, (error) => resolve(!error));
	});

/**
 * Reads one document and prints its figures and findings as one JSON document. Faults go to standard error, one
 * line each, and then nothing is printed on standard output.
 *
 * @returns the exit status: 0 done, 1 could not read or write, 2 bad input
 */
export const runCompute = async (options: ComputeOptions): Promise<number> => {
	const {status, out, faults = []} = await resultOf(options);
	if (out !== undefined) return (await written(options.stdout, out)) ? status : EXIT.cannotReadOrWrite;
	await written(options.stderr, faults.map((fault) => `${fault}\n`).join(''));
	return status;
};

type CommandOptions = Pick<ComputeOptions, 'file' | 'schema'> & {
	readonly id?: string | undefined;
	readonly data: string | undefined;
};

/** `armdrift compute`: a document from a file, standard input, or a saved check. */
export async function runComputeCommand({file, schema, id, data}: CommandOptions): Promise<number> {
	const {stdin, stdout, stderr} = process;
	if ([file, schema, id].filter((one) => one !== undefined).length > 1) return refuseWith(say.oneOnly);
	if (id === undefined) return runCompute({file, schema, stdin, stdout, stderr});
	return orRefuse(() => {
		const check = new Shelf(dataDirectory({flag: data, env: process.env}), () => new Date()).checkNamed(id);
		if (!check.ok) return refuseWith(check.sentence, check.isUnknown ? EXIT.usage : EXIT.cannotReadOrWrite);
		const made = documentOfCheck(check.value);
		if (made.ok) return runCompute({checkDocument: () => made.document, stdin, stdout, stderr});
		return refuseWith(say.fault({at: id, sentence: words.results.missing[made.missing]}));
	});
}
