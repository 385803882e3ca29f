import type {Check, Round, Series, Trial} from '../check/check.js';
import {factsOfSeries} from '../check/progress.js';
import {openSeries} from '../check/series.js';
import {chosenTrial, textOfTrial, trialsOf} from '../check/trials.js';
import {onRadiusMm} from '../procedure/bias-on.js';
import type {Facts} from '../procedure/facts.js';
import {inGaugeUnit} from '../procedure/hold-limits.js';
import {type OnPlace, onPlaces, radiusOf} from '../procedure/places.js';
import {gaugeUnitOf} from '../procedure/readings.js';
import {factsOfTrial} from '../results/document-of-check.js';
import {type CsvValue, csvRecord, isVoid, type NotedCheck} from './radius-csv.js';

/** A round that was read with the bias on. */
type BiasRow = NotedCheck & {
	/** The number of its series, and of the setting within it, from 1. */
	readonly series: number;
	readonly trial: number;
	readonly setting: Trial;
	readonly isChosen: boolean;
	readonly facts: Facts;
	readonly place: OnPlace;
	/** Its number at its radius, from 1. */
	readonly number: number;
	readonly round: Round;
};

const columns: readonly (readonly [name: string, value: (row: BiasRow) => CsvValue])[] = [
	['check_id', ({record}) => record.check.id],
	['started_at', ({record}) => record.check.startedAt],
	['arm', ({record: {check}}) => factsOfSeries(check, openSeries(check)).text('arm-name')],
	['void', isVoid],
	['series', ({series}) => series],
	['device', ({facts}) => facts.text('arm-bias-device')],
	['trial', ({trial}) => trial],
	['setting', ({setting}) => textOfTrial(setting)],
	['chosen', ({isChosen}) => isChosen],
	['place', ({place}) => radiusOf(place)],
	['radius_mm', ({facts, place}) => onRadiusMm(facts, place)],
	['round', ({number}) => number],
	['struck', ({round}) => round.struck !== undefined],
	['gauge_unit', ({facts}) => gaugeUnitOf(facts)],
	['inner_limit', ({facts, round}) => inGaugeUnit(round.innerLimit.value, facts)],
	['outer_limit', ({facts, round}) => round.outerLimit && inGaugeUnit(round.outerLimit.value, facts)],
];

/** The names of the columns, as the first record of the file. */
export const biasHeader = (): string => csvRecord(columns.map(([name]) => name));

/**
 * The records of one check, one for each round that was read with the bias on: hold limits in the unit of the gauge, which
 * stands beside them, positive toward the rim. A check without any has none.
 */
export function biasRecords(filed: NotedCheck): string {
	const {check} = filed.record;
	return check.series
		.flatMap((series, index) => rowsOfSeries(check, series).map((row) => ({...filed, series: index + 1, ...row})))
		.map((row) => csvRecord(columns.map(([, value]) => value(row))))
		.join('');
}

function rowsOfSeries(check: Check, series: Series) {
	const chosen = chosenTrial(check, series);
	return trialsOf(check, series).flatMap((setting, index) => {
		const trial = index + 1;
		const isChosen = chosen?.isKept === true && chosen.number === trial;
		const facts = factsOfTrial(check, series, setting);
		return onPlaces.flatMap((place) =>
			setting[place].map((round, at) => ({trial, setting, isChosen, facts, place, number: at + 1, round})),
		);
	});
}
