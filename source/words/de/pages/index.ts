import {consequences} from './consequences.js';
import {deck} from './deck.js';
import {gauge} from './gauge.js';
import {geometry} from './geometry.js';
import {levelFound} from './level.js';
import {record} from './record.js';
import {roundsTaken} from './rounds.js';
import {verdict} from './verdict.js';
import {view} from './view.js';

/** What the pages of a check say beside the question. */
export const pages = {
	consequences,
	deck,
	gauge,
	geometry,
	level: levelFound,
	record,
	rounds: roundsTaken,
	verdict,
	view,
};
