import type {Check} from '../../check/check.js';
import {bandsShown, lastBands} from '../../pages/band-rows.js';
import {earlierRows} from '../../pages/before-and-after.js';
import {isDeckReady, voidLines} from '../../pages/record-lines.js';
import {inWords} from '../../pages/shown-lines.js';
import {overriddenIn} from '../../pages/verdict-lines.js';
import {isMeasured, type RadiusFigures} from '../../results/figures-types.js';
import type {Voids} from '../../results/voids.js';
import {words} from '../../words/index.js';
import {reportWords} from '../../words/reports.js';
import type {CheckSource} from '../check-source.js';
import {around, notice, type ReportBlock, sentenceBlock, tableBlock, typed} from '../report.js';

const {captions, deck, overridden, verdict} = reportWords;

/** A practice check says so before anything else. */
export const practiceNotices = ({record}: CheckSource): ReportBlock[] =>
	record.check.practice ? [notice(words.beside.practice.notice, 'bad')] : [];

/** A check that is void, or of which nobody knows, says so before anything else; one that was void and counts again says that. */
export const voidNotices = ({voids: {voided, formerVoids = [], unknownBecause} = {}}: CheckSource): ReportBlock[] => [
	...(unknownBecause === undefined ? [] : [notice(words.results.voidUnknown, 'bad')]),
	...(voided
		? [
				notice(
					saidOfVoid(voided.reason, (reason) => ({voided: {...voided, reason}})),
					'bad',
				),
			]
		: []),
	...formerVoids.map((one) => sentenceBlock(saidOfVoid(one.reason, (reason) => ({formerVoids: [{...one, reason}]})))),
];

const saidOfVoid = (reason: string, voids: (reason: string) => Voids) =>
	around(reason, (text) => voidLines(voids(text)).map(inWords).join(' '));

/** A deck that was not put back says so beside the verdict. */
export const deckNotice = ({record, putBackAt}: CheckSource): ReportBlock[] =>
	isDeckReady(record, putBackAt) ? [] : [notice(deck.notReadyBesideVerdict, 'bad')];

/** The hold bands beside those of the series before and of the last check, with how surely their middles are known. */
export function bandsBlock({record: {check}, history}: CheckSource, probe: readonly RadiusFigures[]): ReportBlock[] {
	const measured = probe.filter(isMeasured);
	const pictures = bandsShown(probe, check.limits, [...earlierRows(check), ...lastBands(history)]);
	return pictures.flatMap((shown): ReportBlock[] => {
		if (shown.kind !== 'bands') return [];
		const rows = shown.rows.map((row, index) => ({...row, pullUncertaintyPct: measured[index]?.pullUncertaintyPct}));
		const drawing = {...shown, rows, caption: verdict.limitsOfPull(shown)};
		return [{kind: 'picture', title: captions.bands, drawing, isTold: true}];
	});
}

/** What was gone past although it did not pass, with the reasons; it stays beside the verdict for good. */
export function overridesTable(check: Check): ReportBlock[] {
	const rows = overriddenIn(check).map(({title, sentence: failed, reason, series, holds}) => [
		title,
		failed,
		typed(reason),
		holds ? overridden.still : overridden.earlier({series}),
	]);
	return rows.length === 0 ? [] : [tableBlock(captions.overridden, ['step', 'failed', 'reason', 'state'], rows)];
}
