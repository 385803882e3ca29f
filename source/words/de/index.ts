import {actions} from './actions.js';
import {beside} from './beside/index.js';
import {bias} from './bias/index.js';
import {deviceWords} from './bias-devices.js';
import {commands} from './commands/index.js';
import {dialogue} from './dialogue.js';
import {entries} from './entries.js';
import {faces} from './faces.js';
import {figures} from './figures.js';
import {instruments} from './instruments.js';
import {options} from './options.js';
import {pages} from './pages/index.js';
import {pictures} from './pictures.js';
import {problems, ways} from './problems.js';
import {reasons} from './reasons.js';
import {refusals} from './refusals.js';
import {remedies} from './remedies.js';
import {results} from './results.js';
import {rounds} from './rounds.js';
import {store} from './store.js';
import {terminal} from './terminal.js';
import {years} from './years.js';

/** Every sentence in German, by room. */
export const sentences = {
	actions,
	beside,
	bias,
	biasDevices: deviceWords,
	commands,
	dialogue,
	...entries,
	faces,
	figures,
	instruments,
	options,
	pages,
	pictures,
	problems,
	reasons,
	refusals,
	remedies,
	results,
	rounds,
	store,
	terminal,
	ways,
	years,
};
