import fs from 'node:fs';
import path from 'node:path';
import type Conf from 'conf';
import {saveFault} from './describe-fault.js';
import type {Sealed} from './document.js';
import {readyFolder, syncFolder} from './folder.js';
import {StoreError} from './store-error.js';
import type {Thing} from './store-fault.js';

const FILE_MODE = 0o600;

/** Loads conf at the first save, not at the start: it brings a schema compiler with it that nothing here needs. */
const loadConf = async (): Promise<typeof Conf> => (await import('conf')).default;

type Written = {readonly conf: Conf<Record<string, unknown>>; sealed: Sealed};

/** Conf only writes here. What it would read is read, and held against its checksum, by the store itself. */
const openConf = (Constructor: typeof Conf, file: string, sealed: Sealed): Written => {
	const conf = new Constructor<Record<string, unknown>>({
		cwd: path.dirname(file),
		configName: path.basename(file, '.json'),
		projectSuffix: '',
		accessPropertiesByDotNotation: false,
		clearInvalidConfig: false,
		configFileMode: FILE_MODE,
		deserialize: () => ({}),
		serialize: () => written.sealed.text,
		watch: false,
	});
	const written: Written = {conf, sealed};
	return written;
};

/** Conf reports success for a file that the disk took only in part, so nothing counts before it was read back. */
const verify = (thing: Thing, file: string, wanted: string): void => {
	if (fs.readFileSync(file).equals(Buffer.from(wanted))) return;
	// Cut short by this very save, so nothing is lost with it; left there it would only pass for a damaged file.
	fs.unlinkSync(file);
	throw new StoreError('unwritable', {id: 'cut-short', values: {thing, file}});
};

export type ConfWriter = ReturnType<typeof createConfWriter>;

export const createConfWriter = () => {
	const opened = new Map<string, Written>();
	return {
		/** Loads conf ahead of the first save. */
		async prepare(): Promise<void> {
			await loadConf();
		},
		/** Writes a document to a file that is missing or known to be a plain file, makes it last, and reads it back. */
		async write(thing: Thing, file: string, sealed: Sealed): Promise<void> {
			const Constructor = await loadConf();
			readyFolder(thing, path.dirname(file));
			try {
				// With SNAP set conf overwrites the file in place; some editors leak it to their terminals.
				delete process.env.SNAP;
				const written = opened.get(file) ?? openConf(Constructor, file, sealed);
				opened.set(file, written);
				written.sealed = sealed;
				written.conf.store = sealed.document;
				syncFolder(path.dirname(file));
				verify(thing, file, sealed.text);
			} catch (error) {
				throw saveFault(thing, file, error);
			}
		},
		/** Forgets a file that was moved. */
		forget(file: string): void {
			opened.delete(file);
		},
	};
};
