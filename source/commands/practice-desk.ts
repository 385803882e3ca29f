import {PracticeWorkbench} from '../desk/practice-workbench.js';
import {Shelf} from '../desk/shelf.js';
import {dataDirectory} from '../store/data-directory.js';
import {readyPracticeFolder} from '../store/practice-folder.js';
import {words} from '../words/index.js';
import {type OpenPractice, startedAs} from './seat.js';

type Options = {readonly data: string | undefined; readonly version: string; readonly seed?: number | undefined};

/** Seeds that are short enough to be typed again. */
const seeds = 100_000;

/** The workbench of practice, in a folder of its own within that of the data. @throws StoreError */
export function practiceDesk({data, version, seed}: Options): OpenPractice {
	const realDir = dataDirectory({flag: data, env: process.env});
	const settings = new Shelf(realDir, () => new Date()).settings();
	const dataDir = readyPracticeFolder(realDir, words.commands.practice.mark);
	const desk = new PracticeWorkbench({dataDir, version, settings, seed: () => seed ?? Date.now() % seeds});
	desk.look();
	return {desk, goOn: startedAs(process.env, data, 'practice')};
}
