import type {PastCheck, PastProbe} from '../../check/past-check.js';
import {yearsOf} from '../../pages/years/years-lines.js';
import type {AtWorst} from '../../results/figures-types.js';
import {isKnownToCount} from '../../results/voids.js';
import {doneOver} from '../../results/years/events.js';
import {dayText} from '../../words/dates.js';
import {sideForce} from '../../words/figure-text.js';
import {inUnit, span} from '../../words/numbers.js';
import {reportWords} from '../../words/reports.js';
import {eventText, placeLabel} from '../../words/step-text.js';
import {blocksOfShown} from '../blocks-of-shown.js';
import type {CheckSource} from '../check-source.js';
import {type ReportBlock, type Section, type TableCell, tableBlock, typed} from '../report.js';

const {captions, sections, years: said} = reportWords;

/** A check among the earlier ones of its arm: what changed, the trend, pictures and all figures. */
export function yearsPart({record: {check, issued}, history, voids}: CheckSource): Section[] {
	const years = yearsOf(check, history, issued);
	if (!years || !isKnownToCount(voids)) return [];
	return [
		{
			title: sections.years,
			blocks: [
				...blocksOfShown([...years.changes, ...years.trend]),
				...blocksOfShown(years.pictures, {isTold: true}),
				...doneTable(years.checks),
				...checksTables(years.checks),
			],
		},
	];
}

/** What was done over these checks, in order of the day. */
function doneTable(checks: readonly PastCheck[]): ReportBlock[] {
	const rows = doneOver(checks).map((event) => [dayText(event.on), typed(eventText(event))]);
	return rows.length === 0 ? [] : [tableBlock(captions.done, ['date', 'done'], rows)];
}

/** Every check with its verdict and what it was measured with, and its figures place by place; newest first. */
export function checksTables(checks: readonly PastCheck[]): ReportBlock[] {
	const places = [...new Set(checks.flatMap(({probe}) => probe.map(({place}) => place)))];
	return [
		tableBlock(captions.checks, ['date', 'verdict', 'playingForce', 'room', 'tools', 'id'], checks.map(checkRow)),
		...places.map((place) =>
			tableBlock(
				captions.figuresAt({place: placeLabel(place)}),
				['date', 'radius', 'sidePull', 'holdBand'],
				checks.flatMap(({date, probe}) => probe.filter((one) => one.place === place).map((one) => probeRow(date, one))),
			),
		),
	];
}

function checkRow({date, verdict, atWorst, measuredWith, id}: PastCheck): readonly TableCell[] {
	const {playingMn, temperatureC = null, tools} = measuredWith ?? {};
	return [
		dayText(date),
		verdictCell(verdict, atWorst),
		playingMn === undefined ? '' : inUnit(playingMn, 'gf'),
		temperatureC === null ? said.notKnown : inUnit(temperatureC, 'celsius'),
		typed(tools ?? ''),
		id,
	];
}

const isAtWorst = (word: string | null): word is AtWorst => word !== null && word in said.verdicts;

const verdictCell = (verdict: string | null, atWorst: string | null): TableCell => {
	if (!isAtWorst(atWorst)) return said.noVerdict;
	if (verdict === 'undecided') return {phrase: said.undecided[atWorst], verdict, atWorst};
	return isAtWorst(verdict) ? {phrase: said.verdicts[verdict], verdict, atWorst} : said.noVerdict;
};

function probeRow(date: string, {radiusMm, ...figures}: PastProbe): readonly TableCell[] {
	const {pullPct, pullUncertaintyPct, bandPct, bandUncertaintyPct} = figures;
	const isKnown = pullPct !== null && pullUncertaintyPct !== null && bandPct !== null && bandUncertaintyPct !== null;
	return [
		dayText(date),
		said.radius({radiusMm}),
		...(isKnown
			? [sideForce(pullPct, pullUncertaintyPct), span(bandPct, bandUncertaintyPct)]
			: [said.offScale, said.offScale]),
	];
}
