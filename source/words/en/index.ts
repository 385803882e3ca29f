import {beside} from './beside.js';
import {bias} from './bias/index.js';
import {commands} from './commands.js';
import {dialogue} from './dialogue.js';
import {documents} from './documents.js';
import {entries} from './entries.js';
import {faces} from './faces.js';
import {figures} from './figures.js';
import {findings} from './findings.js';
import {pages} from './pages.js';
import {pictures} from './pictures.js';
import {practice} from './practice/index.js';
import {problems, ways} from './problems.js';
import {reasons} from './reasons.js';
import {reports} from './reports/index.js';
import {results} from './results.js';
import {steps} from './steps.js';
import {store} from './store.js';
import {terminal} from './terminal.js';
import {years} from './years.js';

/** Every sentence in English, by room. */
export const en = {
	beside,
	bias,
	commands,
	dialogue,
	documents,
	entries,
	faces,
	figures,
	findings,
	pages,
	pictures,
	practice,
	problems,
	reasons,
	reports,
	results,
	steps,
	store,
	terminal,
	ways,
	years,
};
