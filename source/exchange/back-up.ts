import {createHash} from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import {Hindrance} from '../desk/hindrance.js';
import {readyFolder} from '../store/folder.js';
import {localDate} from '../store/local-time.js';
import type {Thing} from '../store/store-fault.js';
import {TargetFile} from '../store/target-file.js';
import {words} from '../words/index.js';
import {ImportFile} from './import-file.js';
import {checkedIds, importPlan} from './import-plan.js';
import {type ExportSource, jsonExport} from './write-export.js';

const thing: Thing = {id: 'back-up', values: {}};

/** Back-ups of arms that were deleted. */
export const backupFolder = (dataDir: string): string => path.join(dataDir, 'backups');

/** A dated place in the data folder that nothing has yet: `backups/2026-11-25-north-deck.jsonl`. */
export function backupPlace(dataDir: string, arm: string, now: Date): string {
	const word = arm
		.toLowerCase()
		.replace(/[^a-z0-9]+/g, '-')
		.slice(0, 40)
		.replace(/^-|-$/g, '');
	const base = path.join(backupFolder(dataDir), `${localDate(now)}-${word || 'arm'}`);
	for (let number = 1; ; number++) {
		const file = number === 1 ? `${base}.jsonl` : `${base}-${number}.jsonl`;
		if (fs.lstatSync(file, {throwIfNoEntry: false}) === undefined) return file;
	}
}

type BackUp = {
	readonly file: string;
	readonly dataDir: string;
	readonly source: Omit<ExportSource, 'tell'> & {readonly only: NonNullable<ExportSource['only']>};
	/** For every way out before its end. */
	readonly onLeave: (discard: () => void) => void;
};

/**
 * Writes an export of what is to go, makes it last, and reads it back: byte for byte, and as an import would, held against
 * what is on file.
 * @throws StoreError, Hindrance where it is not whole; then nothing may go
 */
export async function writeBackUp({file, dataDir, source, onLeave}: BackUp): Promise<void> {
	if (path.dirname(file) === backupFolder(dataDir)) readyFolder(thing, path.dirname(file));
	const target = new TargetFile(file, {thing, option: '--backup'});
	onLeave(target.discard);
	const written = createHash('sha256');
	try {
		for (const piece of jsonExport({...source, tell: () => {}})) {
			target.write(piece);
			written.update(piece);
			// So that Ctrl+C is heard.
			await new Promise((resolve) => setImmediate(resolve));
		}
		target.finish();
	} finally {
		target.discard();
	}
	if (!isSame(file, written.digest('hex')) || !isWhole(file, source)) throw notWhole(file);
}

const PIECE_BYTES = 1024 * 1024;

function isSame(file: string, wanted: string): boolean {
	const read = createHash('sha256');
	const descriptor = fs.openSync(file, 'r');
	try {
		const piece = Buffer.alloc(PIECE_BYTES);
		for (let count = -1; count !== 0; ) {
			count = fs.readSync(descriptor, piece);
			read.update(piece.subarray(0, count));
		}
	} finally {
		fs.closeSync(descriptor);
	}
	return read.digest('hex') === wanted;
}

/** Whether an import would find in it all that is to go, and nothing that is otherwise on file. */
function isWhole(file: string, {store, only: {checkIds, profileIds}}: BackUp['source']): boolean {
	const opened = new ImportFile(file);
	try {
		const plan = importPlan(opened, checkedIds(opened), store);
		const differs = plan.newChecks.length + plan.newRemarks.length + plan.clashes.length + plan.remarkClashes.length;
		const profilesDiffer = plan.profiles.added.length + plan.profiles.clashes.length;
		return differs + profilesDiffer === 0 && plan.same === checkIds.length && plan.profiles.same === profileIds.length;
	} finally {
		opened.close();
	}
}

const notWhole = (file: string): Hindrance =>
	new Hindrance('unwritable', file, words.commands.delete.backUpBroken({file}));
