import {isDeckReady} from '../../findings/record-lines.js';
import type {CheckSource} from '../check-source.js';
import {type Block, notice, typed} from '../report.js';

/** A check that was marked void says so before anything else. */
export const voidNotice = ({voidBecause}: CheckSource): Block[] =>
	voidBecause === undefined
		? []
		: [notice(['This check is void and does not count: ', typed(voidBecause), '.'], 'bad')];

/** A deck that was not put back says so beside the verdict. */
export const deckNotice = ({record, putBackAt}: CheckSource): Block[] =>
	isDeckReady(record, putBackAt) ? [] : [notice('Deck not ready to play: its put-back list is not done.', 'bad')];
