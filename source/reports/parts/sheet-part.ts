import type {Check} from '../../check/check.js';
import {openSeries, remediesIn} from '../../check/series.js';
import {chosenTrial, textOfTrial} from '../../check/trials.js';
import {bandRow} from '../../pages/band-rows.js';
import {isDeckReady} from '../../pages/record-lines.js';
import {overriddenIn} from '../../pages/verdict-lines.js';
import {isMeasured, type RadiusFigures} from '../../results/figures-types.js';
import type {Issued} from '../../results/issued.js';
import {isKnownToCount} from '../../results/voids.js';
import {dayText} from '../../words/dates.js';
import {reportWords} from '../../words/reports.js';
import type {CheckSource} from '../check-source.js';
import {around, notice, type Phrase, type ReportBlock, type Section, sentenceBlock, typed} from '../report.js';
import {armName, forceAt, typedAt} from './about.js';
import {practiceNotices, voidNotices} from './beside-verdict.js';

const {about, sheet} = reportWords;
const {done, headings, next} = sheet;

/** Whose arm it is, which, and when: what is known of it. */
export const aboutSheet = ({record: {check}}: CheckSource): (readonly [string, Phrase])[] => {
	const ifKnown = (name: string, text: string | undefined) => (text ? [[name, typed(text)] as const] : []);
	return [
		...ifKnown(sheet.about.shop, check.shop),
		...ifKnown(sheet.about.customer, typedAt(check, 'customer-name')),
		[about.arm, typed(armName(check))],
		...ifKnown(about.answers['cartridge-name'], typedAt(check, 'cartridge-name')),
		[about.date, dayText(check.startedAt.slice(0, 10))],
		...ifKnown(sheet.about.complaint, typedAt(check, 'customer-complaint')),
	];
};

/** The customer's sheet, on one page: the word, what it means, what was done, what comes next, and cautions. */
export const sheetParts = (source: CheckSource): Section[] => [
	{title: headings.result, blocks: resultBlocks(source)},
	{title: headings.done, blocks: [{kind: 'list', items: doneItems(source)}]},
	{title: headings.next, blocks: [{kind: 'list', items: nextItems(source)}]},
	{title: headings.care, blocks: [{kind: 'list', items: sheet.care}]},
];

function resultBlocks(source: CheckSource): ReportBlock[] {
	const {record, putBackAt} = source;
	const {check, issued} = record;
	return [
		...practiceNotices(source),
		...voidNotices(source),
		...(issued ? wordBlocks(issued) : [sentenceBlock(sheet.noWord, 'strong'), sentenceBlock(sheet.meansNothing)]),
		...(isDeckReady(record, putBackAt) ? [] : [notice(sheet.notReady, 'bad')]),
		...(issued ? pictureBlock(issued.figures.probe, check) : []),
	];
}

const wordBlocks = ({figures}: Issued): ReportBlock[] => {
	const {verdict, atWorst, probe} = figures;
	const isBeyond = (key: 'pullAtWorst' | 'bandAtWorst') => probe.some((one) => one[key] === 'beyond');
	const of = isBeyond('pullAtWorst') ? (isBeyond('bandAtWorst') ? 'both' : 'pull') : 'band';
	return [
		{kind: 'verdict', phrase: sheet.word(figures), verdict, atWorst},
		sentenceBlock(sheet.means({atWorst, of, isDecided: verdict !== 'undecided'}), 'strong'),
	];
};

/** The bands of today alone, named for somebody who knows records. */
function pictureBlock(probe: readonly RadiusFigures[], {limits}: Check): ReportBlock[] {
	const {title, caption, at, ...names} = sheet.picture;
	const rows = probe.filter(isMeasured).map((one) => ({...bandRow(one), label: at[one.place]}));
	if (rows.length === 0) return [];
	const within = {goodPct: limits.pullGoodPct, usablePct: limits.pullUsablePct};
	const drawing = {kind: 'bands', rows, ...within, caption: caption(within), names} as const;
	return [{kind: 'picture', title, drawing, isTold: true}, sentenceBlock(drawing.caption)];
}

function doneItems({record, putBackAt}: CheckSource): Phrase[] {
	const {check, issued} = record;
	const remedies = remediesIn(check.series);
	const bias = chosenTrial(check, openSeries(check));
	const setting = bias?.isKept ? textOfTrial(bias.trial) : '';
	const force = forceAt(check, 'back-force');
	const level = issued?.figures.level;
	return [
		done.measured({day: dayText(check.startedAt.slice(0, 10))}),
		...(level ? [done.level(level)] : []),
		...(remedies.length > 0 ? [done.tried({remedies: [...new Set(remedies)]})] : []),
		...(setting === '' ? [] : [around(setting, (text) => done.bias({setting: text}))]),
		...(force === '' ? [] : [done.force({force})]),
		...(isDeckReady(record, putBackAt) ? [done.ready] : []),
		...(overriddenIn(check).some(({holds}) => holds) ? [done.overridden] : []),
	];
}

function nextItems({record: {check, issued, nextCheck}, voids}: CheckSource): Phrase[] {
	// What does not count gives no date either.
	const isDated = nextCheck !== undefined && !check.practice && isKnownToCount(voids);
	return [nextText(issued), ...(isDated ? [next.check({day: dayText(nextCheck.date)})] : [])];
}

function nextText(issued: Issued | null): string {
	const [first] = issued?.findings ?? [];
	if (!issued) return next.finish;
	if (!first || first.code === 'sound') return next.nothing;
	return first.code === 'undecided' ? next.settle : next.by[first.who];
}
