import path from 'node:path';
import {backupFolder} from '../exchange/back-up.js';
import {dataDirectory} from '../store/data-directory.js';
import {practiceFolderIn} from '../store/practice-folder.js';
import {columns} from '../terminal/columns.js';
import {words} from '../words/index.js';
import {jsonText} from './json-text.js';
import {orRefuse, printOut} from './print.js';
import {reportFolder} from './report-file.js';

const say = words.commands.paths;

type Place = keyof typeof say;

const placesIn = (data: string): Readonly<Record<Place, string>> => ({
	data,
	checks: path.join(data, 'checks'),
	index: path.join(data, 'index'),
	reports: reportFolder(data),
	backups: backupFolder(data),
	practice: practiceFolderIn(data),
});

/** `armdrift paths`: where things lie, or will lie; nothing is looked at or made. @returns exit status */
export const runPaths = ({as, data}: {readonly as: string; readonly data?: string}): Promise<number> =>
	orRefuse(() => {
		const places = placesIn(dataDirectory({flag: data, env: process.env}));
		if (as === 'json') return printOut(`${jsonText(places)}\n`);
		const isPlace = (name: string): name is Place => name in say;
		return printOut(
			columns(
				Object.keys(places)
					.filter(isPlace)
					.map((name) => [say[name], places[name]]),
			),
		);
	});
