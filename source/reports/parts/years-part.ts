import type {PastCheck, PastProbe} from '../../check/past-check.js';
import {dayText} from '../../pages/years/day-text.js';
import {yearsOf} from '../../pages/years/years-lines.js';
import type {AtWorst, Verdict} from '../../results/figures-types.js';
import {formatIn} from '../../units.js';
import {placeLabel} from '../../words/step-text.js';
import {plainNumber, sideForce, span, verdictWord} from '../../words/wording.js';
import {blocksOfShown} from '../blocks-of-shown.js';
import type {CheckSource} from '../check-source.js';
import {type Block, type Cell, type Section, typed} from '../report.js';

const names = {table: '', picture: '', isTold: true};

/** A check among the earlier ones of its arm: what changed, the trend, pictures and all figures. */
export function yearsPart({record: {check, issued}, history, voids}: CheckSource): Section[] {
	const years = yearsOf(check, history, issued);
	if (!years || voids?.voided) return [];
	return [
		{
			title: 'Over the years',
			blocks: [
				...blocksOfShown([...years.changes, ...years.trend], names),
				...blocksOfShown(years.pictures, names),
				...checksTables(years.checks),
			],
		},
	];
}

/** Every check with its verdict and what it was measured with, and its figures place by place; newest first. */
export function checksTables(checks: readonly PastCheck[]): Block[] {
	const places = [...new Set(checks.flatMap(({probe}) => probe.map(({place}) => place)))];
	return [
		{
			kind: 'table',
			caption: 'All checks that count, newest first',
			head: ['date', 'verdict', 'playing force', 'room', 'gauge and tools', 'id'],
			rows: checks.map(checkRow),
		},
		...places.map(
			(place): Block => ({
				kind: 'table',
				caption: `Figures at the ${placeLabel(place)} radius, percent of the playing force, each with its ± for 95 %`,
				head: ['date', 'radius', 'side pull', 'hold band'],
				rows: checks.flatMap(({date, probe}) =>
					probe.filter((one) => one.place === place).map((one) => probeRow(date, one)),
				),
			}),
		),
	];
}

function checkRow({date, verdict, atWorst, measuredWith, id}: PastCheck): readonly Cell[] {
	const {playingMn, temperatureC = null, tools} = measuredWith ?? {};
	return [
		dayText(date),
		verdictCell(verdict, atWorst),
		playingMn === undefined ? '' : formatIn(playingMn, 'gf'),
		temperatureC === null ? 'not known' : formatIn(temperatureC, 'celsius'),
		typed(tools ?? ''),
		id,
	];
}

const isVerdict = (word: string | null): word is Verdict => word !== null && word in verdictWord;
const isAtWorst = (word: string | null): word is AtWorst => isVerdict(word) && word !== 'undecided';

const verdictCell = (verdict: string | null, atWorst: string | null): Cell => {
	if (!isVerdict(verdict) || !isAtWorst(atWorst)) return 'none';
	return {words: verdict === 'undecided' ? `${atWorst} at worst` : verdict.replace('-', ' '), verdict, atWorst};
};

function probeRow(date: string, {radiusMm, ...figures}: PastProbe): readonly Cell[] {
	const {pullPct, pullUncertaintyPct, bandPct, bandUncertaintyPct} = figures;
	const isKnown = pullPct !== null && pullUncertaintyPct !== null && bandPct !== null && bandUncertaintyPct !== null;
	return [
		dayText(date),
		`${plainNumber(radiusMm)} mm`,
		...(isKnown
			? [sideForce(pullPct, pullUncertaintyPct), span(bandPct, bandUncertaintyPct)]
			: ['off scale', 'off scale']),
	];
}
