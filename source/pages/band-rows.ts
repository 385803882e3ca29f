import type {PastCheck, PastProbe} from '../check/past-check.js';
import type {LimitPair} from '../measures/hold-band.js';
import type {VerdictLimits} from '../procedure/facts.js';
import {isMeasured, type MeasuredRadius, type RadiusFigures} from '../results/figures-types.js';
import {words} from '../words/index.js';
import {placeLabel} from '../words/step-text.js';
import type {BegunBand, FrictionBars} from './instruments/bands.js';
import type {BandRow, Shown, Tone} from './shown-lines.js';

const {label, at, last: lastLabel} = words.pages.verdict.bands;

const {judged} = words.instruments;

/** How a figure is meant, or a whole check, as it stands on file too. What is not decided is no fault. */
export const judgedTone = (found: string | null, atWorst: string | null): Tone => {
	if (atWorst === 'good') return 'good';
	return atWorst === 'usable' || (found === 'undecided' && atWorst === 'beyond') ? 'warn' : 'bad';
};

export const bandRow = (figures: MeasuredRadius): BandRow => ({
	label: label(figures),
	figure: {text: judged.pull(figures), tone: judgedTone(figures.pullVerdict, figures.pullAtWorst)},
	lowPct: figures.pullPct - figures.bandPct / 2,
	highPct: figures.pullPct + figures.bandPct / 2,
	pullPct: figures.pullPct,
});

/** The hold bands of all measured radii as one picture; nothing when none has figures. */
export function bandsShown(
	probe: readonly RadiusFigures[],
	limits: VerdictLimits,
	earlier: readonly BandRow[] = [],
): Shown[] {
	const measured = probe.filter(isMeasured);
	if (measured.length === 0 && earlier.length === 0) return [];
	return [
		{
			kind: 'bands',
			rows: [...measured.map(bandRow), ...earlier],
			goodPct: limits.pullGoodPct,
			usablePct: limits.pullUsablePct,
			friction: frictionOf(measured, limits),
			caption: measured.map(at).join(' '),
		},
	];
}

const frictionOf = (measured: readonly MeasuredRadius[], limits: VerdictLimits): FrictionBars | undefined =>
	measured.length === 0
		? undefined
		: {
				rows: measured.map((one) => ({
					label: placeLabel(one.place),
					bandPct: one.bandPct,
					figure: {text: judged.band(one), tone: judgedTone(one.bandVerdict, one.bandAtWorst)},
				})),
				goodPct: limits.bandGoodPct,
				usablePct: limits.bandUsablePct,
			};

/** The rounds of one place, the last of them below, each to scale; and the limit of one that has begun. */
export function roundsShown(
	rounds: readonly (LimitPair & {readonly label: string})[],
	begun: BegunBand | undefined,
	limits: VerdictLimits,
	earlier: readonly BandRow[],
	caption: string,
): Shown {
	return {
		kind: 'bands',
		rows: [
			...earlier,
			...rounds.map(({label: name, innerLimit, outerLimit}) => ({
				label: name,
				lowPct: innerLimit,
				highPct: outerLimit,
				pullPct: (innerLimit + outerLimit) / 2,
			})),
		],
		begun,
		goodPct: limits.pullGoodPct,
		usablePct: limits.pullUsablePct,
		caption,
	};
}

/** The hold bands of the last check, to stand beside those of today. */
export function lastBands([last]: readonly PastCheck[], places?: readonly string[]): BandRow[] {
	return (last?.probe ?? [])
		.filter(({place}) => places?.includes(place) ?? true)
		.flatMap((one) => bandOf(one, last?.date));
}

function bandOf({place, pullPct, bandPct}: PastProbe, date?: string): BandRow[] {
	if (pullPct === null || bandPct === null) return [];
	return [
		{
			label: lastLabel({place}),
			lowPct: pullPct - bandPct / 2,
			highPct: pullPct + bandPct / 2,
			pullPct,
			earlier: true,
			date,
		},
	];
}
