import {documentOfCheck} from '../results/document-of-check.js';
import {dataDirectory} from '../store/data-directory.js';
import {StoreError} from '../store/store-error.js';
import {EXIT} from '../terminal/exit-paths.js';
import {printable} from '../terminal/printable.js';
import {words} from '../words/index.js';
import {runCompute} from './compute.js';
import {OpenWorkbench} from './open-workbench.js';

type Options = {
	readonly file: string | undefined;
	readonly schema?: boolean;
	readonly id?: string | undefined;
	readonly data: string | undefined;
};

/** `armdrift compute`: a document from a file, standard input, or a saved check. */
export async function runComputeCommand({file, schema, id, data}: Options): Promise<number> {
	const {stdin, stdout, stderr} = process;
	if ([file, schema, id].filter((one) => one !== undefined).length > 1)
		return refuse('Give one of these only: a file, --id or --schema.', EXIT.usage);
	if (id === undefined) return runCompute({file, schema, stdin, stdout, stderr});
	const found = savedDocument(id, data);
	if (!found.ok) return refuse(found.sentence, found.status);
	return runCompute({checkDocument: () => found.document, stdin, stdout, stderr});
}

function refuse(sentence: string, status: number): number {
	process.stderr.write(`${printable(sentence)}\n`);
	return status;
}

type Found =
	| {readonly ok: true; readonly document: unknown}
	| {readonly ok: false; readonly sentence: string; readonly status: number};

function savedDocument(id: string, data: string | undefined): Found {
	try {
		const workbench = new OpenWorkbench({dataDir: dataDirectory({flag: data, env: process.env}), version: ''});
		const check = workbench.archive.checkNamed(id);
		if (!check.ok)
			return {ok: false, sentence: check.sentence, status: check.isUnknown ? EXIT.usage : EXIT.cannotReadOrWrite};
		const made = documentOfCheck(check.value);
		return made.ok
			? made
			: {ok: false, sentence: `${id}: ${words.documents.missing[made.missing]}`, status: EXIT.usage};
	} catch (error) {
		if (error instanceof StoreError) return {ok: false, sentence: error.sentence, status: EXIT.cannotReadOrWrite};
		throw error;
	}
}
