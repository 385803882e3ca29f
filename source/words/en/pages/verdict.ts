import type {BetweenRadii, Figures, MeasuredRadius, RadiusFigures} from '../../../results/figures-types.js';
import {listed, mm, percent, plainNumber, printsAsZero, rounded, span, withUncertainty} from '../../numbers.js';
import {entries, placeName} from '../entries.js';
import {bandAt, forceWithWay, pullAt, sideForce, sureFirst, verdictName, verdictWord} from '../figures.js';

/** A value with its uncertainty. */
type Sized = readonly [value: number, uncertainty: number];

/** A verdict on one figure in a word or two, what is sure first. */
const judged = (verdict: MeasuredRadius['pullVerdict'], atWorst: MeasuredRadius['pullAtWorst']): string =>
	verdict === 'undecided' ? sureFirst(atWorst) : verdictName[verdict];

const offScale = verdictName['off-scale'];
const radius = ({place, radiusMm}: Pick<RadiusFigures, 'place' | 'radiusMm'>): string =>
	`${entries.places[place]} ${mm(radiusMm)}`;
const pull = (one: MeasuredRadius): string => sideForce(one.pullPct, one.pullUncertaintyPct);
const band = (one: MeasuredRadius): string => span(one.bandPct, one.bandUncertaintyPct);

type Row = {readonly name: string; readonly pull: string; readonly band: string};

const lean = (found: {readonly micrometres: Sized; readonly degrees: Sized | null} | 'none' | undefined): string => {
	if (found === undefined) return '';
	if (found === 'none') return ' The stylus does not lean.';
	const {micrometres, degrees} = found;
	return ` The stylus leans ${withUncertainty(...micrometres, ' µm')}${degrees ? ` (${withUncertainty(...degrees, '°')})` : ''}.`;
};

/** What a check came to. */
export const verdict = {
	/** What is sure comes first. */
	headline: ({verdict: found, atWorst}: Pick<Figures, 'verdict' | 'atWorst'>) =>
		found !== 'undecided' || atWorst === 'off-scale'
			? `Verdict: ${verdictWord[found]}`
			: `Verdict: ${sureFirst(atWorst)} (${verdictWord.undecided})`,
	/** The word, and what the arm does. */
	told: ({does, ...found}: Pick<Figures, 'verdict' | 'atWorst'> & {readonly does: string | undefined}): string =>
		does === undefined ? `${verdict.headline(found)}.` : `${verdict.headline(found)}. ${does}`,
	none: 'No verdict: the probe is not finished.',
	lastNotMeasured: 'The last series is not finished. These figures are from the series before it.',
	likely: ({likely}: {likely: string}) => `Likely: ${likely}.`,
	doNow: ({what}: {what: string}) => `Do this now: ${what}.`,
	next: ({next}: {next: string}) => `For next time: ${next}.`,
	/** The page behind the one thing. */
	numbers: 'numbers',
	alsoSeen: ({found}: {found: string}) => `Also seen: ${found}`,
	overYears: 'Over the years',
	overridden: ({
		title,
		sentence,
		reason,
		series,
		holds,
	}: {
		title: string;
		sentence: string;
		reason: string;
		series: number;
		holds: boolean;
	}) => `${holds ? 'Overridden' : `Overridden earlier, in series ${series}`}: ${title}. ${sentence} Reason: ${reason}.`,
	notSetAnew: ({
		costs,
	}: {
		costs: readonly {readonly radiusMm: number; readonly isPct: number; readonly couldBePct: number}[];
	}) =>
		`The gauge was not set again for each round. So the pull has ${listed(
			costs.map(
				({radiusMm, isPct, couldBePct}) =>
					`± ${percent(isPct, 1)} instead of ± ${percent(couldBePct, 1)} at ${mm(radiusMm)}`,
			),
		)}.`,
	radii: {
		columns: {pull: 'pull', band: 'friction'},
		offScale,
		radius,
		pull,
		band,
		judgedPull: (one: MeasuredRadius) => `${pull(one)}: ${judged(one.pullVerdict, one.pullAtWorst)}`,
		judgedBand: (one: MeasuredRadius) => `${band(one)}: ${judged(one.bandVerdict, one.bandAtWorst)}`,
		limits: 'allowed',
		allowed: ({goodPct, usablePct}: {goodPct: number; usablePct: number}) =>
			`good to ${plainNumber(goodPct)} %, usable to ${plainNumber(usablePct)} %`,
		row: (row: Row) => `${row.name}: pull ${row.pull}; friction ${row.band}.`,
	},
	/** What a maker or a curious owner wants beside the verdict. */
	details: ({
		figures,
		leans,
	}: {
		figures: MeasuredRadius;
		/** As finely as the pull lets it be known. */
		leans: Parameters<typeof lean>[0];
	}) => {
		const {breakawayPct, torqueMicroNm, tiltSharePct, tiltShareUncertaintyPct, wallShare} = figures;
		const tilt =
			tiltSharePct === null ? '' : ` Pull of the tilt: ${sideForce(tiltSharePct, tiltShareUncertaintyPct ?? 0)}.`;
		return `${radius(figures)}. The arm breaks away at ${percent(breakawayPct, 1)} above or below the pull. Pull as torque: ${forceWithWay(torqueMicroNm, 'µN·m', 0)}.${tilt} Load on groove walls: inner ${percent(100 * wallShare.inner, 1)}, outer ${percent(100 * wallShare.outer, 1)}.${lean(leans)}`;
	},
	between: ({en, differs, torqueSlopeMicroNmPerDeg, neutralRadiusMm}: BetweenRadii) =>
		[
			`${differs ? 'The pull changes over the record' : 'The pull shows no change over the record'}: the difference is ${rounded(en, 2)} times its ±. If that multiple (E_n) is above 1, the difference is real.`,
			`Per degree of swing the torque changes by ${rounded(torqueSlopeMicroNmPerDeg, 2)} µN·m${printsAsZero(torqueSlopeMicroNmPerDeg, 2) || torqueSlopeMicroNmPerDeg > 0 ? '' : ' (minus: it pushes back)'}.`,
			...(neutralRadiusMm === null ? [] : [`There is no pull at ${rounded(neutralRadiusMm, 0)} mm.`]),
		].join(' '),
	bands: {
		label: ({place, radiusMm}: MeasuredRadius) => `${entries.places[place]} ${plainNumber(radiusMm)}`,
		before: ({place}: MeasuredRadius) => `before ${entries.places[place]}`,
		last: ({place}: {place: string}) => `last ${placeName(place)}`,
		at: (one: MeasuredRadius) => `${entries.places[one.place]} radius: pull ${pullAt(one)}; friction ${bandAt(one)}.`,
	},
	series: {
		closed: ({number, because, hasFigures}: {number: number; because: string; hasFigures: boolean}) =>
			`Series ${number} ended: ${because}${hasFigures ? '' : ' (no figures)'}`,
		beforeAndNow: 'Before and now',
		columns: {before: 'before', now: 'now'},
		pull: ({place}: Pick<MeasuredRadius, 'place'>) => `${entries.places[place]} pull`,
		band: ({place}: Pick<MeasuredRadius, 'place'>) => `${entries.places[place]} friction`,
	},
};
