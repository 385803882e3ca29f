import {arms} from './arms.js';
import {events} from './events.js';
import {home} from './home.js';
import {past} from './past.js';
import {practice} from './practice.js';
import {profiles} from './profiles.js';
import {report} from './report.js';
import {settings} from './settings.js';

/** The pages beside a check. */
export const beside = {arms, back: 'zurück', events, home, past, practice, profiles, report, settings};
