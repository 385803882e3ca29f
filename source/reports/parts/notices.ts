import {isDeckReady, voidLines} from '../../pages/record-lines.js';
import type {CheckSource} from '../check-source.js';
import {type Block, notice, sentence, type Words, withTyped} from '../report.js';

/** A check that is void says so before anything else; one that was void and counts again says that. */
export function voidNotices({voids = {}}: CheckSource): Block[] {
	const reasons = [voids.voided, ...(voids.formerVoids ?? [])].flatMap((one) => (one ? [one.reason] : []));
	return voidLines(voids).flatMap((one, index): Block[] => {
		if (one.kind !== 'line') return [];
		const words: Words = withTyped(one.text, reasons[index] ?? '');
		return [one.tone === 'bad' ? notice(words, one.tone) : sentence(words, one.tone)];
	});
}

/** A deck that was not put back says so beside the verdict. */
export const deckNotice = ({record, putBackAt}: CheckSource): Block[] =>
	isDeckReady(record, putBackAt) ? [] : [notice('Deck not ready to play: its put-back list is not done.', 'bad')];
