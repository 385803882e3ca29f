import type {BetweenRadii, Figures, MeasuredRadius, RadiusFigures} from '../../../results/figures-types.js';
import {listed, mm, percent, plainNumber, printsAsZero, rounded, span, withUncertainty} from '../../numbers.js';
import {entries, placeName} from '../entries.js';
import {bandAt, forceWithWay, pullAt, radiusName, sideForce, sureFirst, verdictName, verdictWord} from '../figures.js';

/** A value with its uncertainty. */
type Sized = readonly [value: number, uncertainty: number];

/** A verdict on one figure in a word or two, what is sure first. */
const judged = (verdict: MeasuredRadius['pullVerdict'], atWorst: MeasuredRadius['pullAtWorst']): string =>
	verdict === 'undecided' ? sureFirst(atWorst) : verdictName[verdict];

const offScale = verdictName['off-scale'];
const radius = ({place, radiusMm}: Pick<RadiusFigures, 'place' | 'radiusMm'>): string =>
	`${radiusName(place)} ${mm(radiusMm)}`;
const pull = (one: MeasuredRadius): string => sideForce(one.pullPct, one.pullUncertaintyPct);
const band = (one: MeasuredRadius): string => span(one.bandPct, one.bandUncertaintyPct);

type Row = {readonly name: string; readonly pull: string; readonly band: string};

const lean = (found: {readonly micrometres: Sized; readonly degrees: Sized | null} | 'none' | undefined): string => {
	if (found === undefined) return '';
	if (found === 'none') return ' Die Nadel weicht nicht aus.';
	const {micrometres, degrees} = found;
	return ` Auslenkung der Nadel: ${withUncertainty(...micrometres, ' µm')}${degrees ? ` (${withUncertainty(...degrees, '°')})` : ''}.`;
};

/** What a check came to. */
export const verdict = {
	/** What is sure comes first. */
	headline: ({verdict: found, atWorst}: Pick<Figures, 'verdict' | 'atWorst'>) =>
		found !== 'undecided' || atWorst === 'off-scale'
			? `Urteil: ${verdictWord[found]}`
			: `Urteil: ${sureFirst(atWorst)} (${verdictWord.undecided})`,
	/** The word, and what the arm does. */
	told: ({does, ...found}: Pick<Figures, 'verdict' | 'atWorst'> & {readonly does: string | undefined}): string =>
		does === undefined ? `${verdict.headline(found)}.` : `${verdict.headline(found)}. ${does}`,
	none: 'Kein Urteil: Die Messung ist nicht fertig.',
	lastNotMeasured: 'Die letzte Messreihe ist nicht fertig. Diese Zahlen stammen aus der davor.',
	likely: ({likely}: {likely: string}) => `Vermutlich: ${likely}.`,
	doNow: ({what}: {what: string}) => `Jetzt: ${what}.`,
	next: ({next}: {next: string}) => `Fürs nächste Mal: ${next}.`,
	/** The page behind the one thing. */
	numbers: 'Zahlen',
	alsoSeen: ({found}: {found: string}) => `Auch gesehen: ${found}`,
	overYears: 'Über die Jahre',
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
	}) =>
		`${holds ? 'Übergangen' : `Früher übergangen, in Messreihe ${series}`}: ${title}. ${sentence} Grund: ${reason}.`,
	notSetAnew: ({
		costs,
	}: {
		costs: readonly {readonly radiusMm: number; readonly isPct: number; readonly couldBePct: number}[];
	}) =>
		`Der Kraftmesser wurde nicht für jede Runde neu aufgestellt. Darum hat der Zug ${listed(
			costs.map(
				({radiusMm, isPct, couldBePct}) =>
					`± ${percent(isPct, 1)} statt ± ${percent(couldBePct, 1)} bei ${mm(radiusMm)}`,
			),
		)}.`,
	radii: {
		columns: {pull: 'Zug', band: 'Reibung'},
		offScale,
		radius,
		pull,
		band,
		judgedPull: (one: MeasuredRadius) => `${pull(one)}: ${judged(one.pullVerdict, one.pullAtWorst)}`,
		judgedBand: (one: MeasuredRadius) => `${band(one)}: ${judged(one.bandVerdict, one.bandAtWorst)}`,
		limits: 'erlaubt',
		allowed: ({goodPct, usablePct}: {goodPct: number; usablePct: number}) =>
			`gut bis ${plainNumber(goodPct)} %, brauchbar bis ${plainNumber(usablePct)} %`,
		row: (row: Row) => `${row.name}: Zug ${row.pull}; Reibung ${row.band}.`,
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
			tiltSharePct === null ? '' : ` Zug aus der Neigung: ${sideForce(tiltSharePct, tiltShareUncertaintyPct ?? 0)}.`;
		return `${radius(figures)}. Der Arm bricht los bei ${percent(breakawayPct, 1)} über oder unter dem Zug. Zug als Drehmoment: ${forceWithWay(torqueMicroNm, 'µN·m', 0)}.${tilt} Last auf den Rillenwänden: innen ${percent(100 * wallShare.inner, 1)}, außen ${percent(100 * wallShare.outer, 1)}.${lean(leans)}`;
	},
	between: ({en, differs, torqueSlopeMicroNmPerDeg, neutralRadiusMm}: BetweenRadii) =>
		[
			`Der Zug ändert sich über die Platte${differs ? '' : ' nicht erkennbar'}: Der Unterschied ist das ${rounded(en, 2)}-Fache seines ±. Ist dieses Vielfache (E_n) größer als 1, ist der Unterschied echt.`,
			`Je Grad Schwenk ändert sich das Drehmoment um ${rounded(torqueSlopeMicroNmPerDeg, 2)} µN·m${printsAsZero(torqueSlopeMicroNmPerDeg, 2) || torqueSlopeMicroNmPerDeg > 0 ? '' : ' (minus: drückt zurück)'}.`,
			...(neutralRadiusMm === null ? [] : [`Kein Zug bei ${rounded(neutralRadiusMm, 0)} mm.`]),
		].join(' '),
	bands: {
		label: ({place, radiusMm}: MeasuredRadius) => `${entries.places[place]} ${plainNumber(radiusMm)}`,
		before: ({place}: MeasuredRadius) => `vorher ${entries.places[place]}`,
		last: ({place}: {place: string}) => `zuletzt ${placeName(place)}`,
		at: (one: MeasuredRadius) => `${radiusName(one.place)}: Zug ${pullAt(one)}; Reibung ${bandAt(one)}.`,
	},
	series: {
		closed: ({number, because, hasFigures}: {number: number; because: string; hasFigures: boolean}) =>
			`Messreihe ${number} beendet: ${because}${hasFigures ? '' : ' (keine Zahlen)'}`,
		beforeAndNow: 'Vorher und jetzt',
		columns: {before: 'vorher', now: 'jetzt'},
		pull: ({place}: Pick<MeasuredRadius, 'place'>) => `Zug, ${radiusName(place)}`,
		band: ({place}: Pick<MeasuredRadius, 'place'>) => `Reibung, ${radiusName(place)}`,
	},
};
