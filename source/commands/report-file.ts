import fs from 'node:fs';
import path from 'node:path';
import {attempt} from '../desk/hindrance.js';
import type {Shelf} from '../desk/shelf.js';
import {removeFault} from '../store/describe-fault.js';
import {readyFolder} from '../store/folder.js';
import {TargetFile} from '../store/target-file.js';
import type {Reports} from '../workbench.js';

const thing = {id: 'report', values: {}} as const;

/** Reports that a key on the screen wrote. */
export const reportFolder = (dataDir: string): string => path.resolve(dataDir, 'reports');
/** That of an arm goes with its newest check. */
const armFileIn = (dataDir: string, id: string): string => path.join(reportFolder(dataDir), `${id}-arm.html`);
const fileIn = (dataDir: string, id: string): string => path.join(reportFolder(dataDir), `${id}.html`);

type Options = {
	/** Version of the program that writes. */
	readonly version: string;
	/** Shows a file that was written; what goes wrong with that is its own affair. */
	readonly show: (file: string) => void;
};

/** Reports in a folder of their own beside the data, each under the id of its check; written anew, it is replaced. */
export const reportsBeside = (shelf: Shelf, {version, show}: Options): Reports => ({
	fileOf: (id) => fileIn(shelf.dataDir, id),
	write: (id) =>
		attempt(async () => {
			const {pageOnCheck} = await import('./report.js');
			place(fileIn(shelf.dataDir, id), pageOnCheck(id, shelf, version), shelf, show);
		}),
	fileOfArm: (newestId) => armFileIn(shelf.dataDir, newestId),
	writeArm: (arm) =>
		attempt(async () => {
			const {pageOnArm} = await import('./report.js');
			const {page, newestId} = pageOnArm(arm, shelf, version);
			place(armFileIn(shelf.dataDir, newestId), page, shelf, show);
		}),
});

function place(target: string, page: string, {dataDir}: Shelf, show: Options['show']): void {
	readyFolder(thing, reportFolder(dataDir));
	const file = new TargetFile(target, {thing, force: true, option: '--data'});
	file.write(page);
	file.finish();
	show(target);
}

/** Takes away what was written about checks that go. @throws StoreError */
export function removeReports(dataDir: string, ids: readonly string[]): void {
	for (const file of ids.flatMap((id) => [fileIn(dataDir, id), armFileIn(dataDir, id)])) {
		try {
			fs.rmSync(file, {force: true});
		} catch (error) {
			throw removeFault(thing, file, error);
		}
	}
}
