import {beside} from './beside/index.js';
import {bias} from './bias/index.js';
import {deviceWords} from './bias-devices.js';
import {commands} from './commands/index.js';
import {dialogue} from './dialogue.js';
import {documents} from './documents.js';
import {entries} from './entries.js';
import {faces} from './faces.js';
import {figures} from './figures.js';
import {findings} from './findings.js';
import {options} from './options.js';
import {pages} from './pages/index.js';
import {pictures} from './pictures.js';
import {practice} from './practice/index.js';
import {problems, ways} from './problems.js';
import {reasons} from './reasons.js';
import {refusals} from './refusals.js';
import {reports} from './reports/index.js';
import {results} from './results.js';
import {rounds} from './rounds.js';
import {steps} from './steps/index.js';
import {store} from './store.js';
import {terminal} from './terminal.js';
import {years} from './years.js';

/** Every sentence in English, by room. */
export const en = {
	beside,
	bias,
	biasDevices: deviceWords,
	commands,
	dialogue,
	documents,
	...entries,
	faces,
	figures,
	findings,
	options,
	pages,
	pictures,
	practice,
	problems,
	reasons,
	refusals,
	reports,
	results,
	rounds,
	steps,
	store,
	terminal,
	ways,
	years,
};
