import type {Check, Series} from '../check/check.js';
import {factsOfSeries, progressOf} from '../check/progress.js';
import {openSeries} from '../check/series.js';
import {zeroOf} from '../procedure/hold-limits.js';
import {bandRow, bandsPicture} from './band-rows.js';
import {type Finding, findingsOf} from './diagnose.js';
import {documentOfCheck} from './document-of-check.js';
import {type Figures, figuresOf, isMeasured, type RadiusFigures} from './figures.js';
import {type BandRow, line, type Shown, type Tone} from './shown-lines.js';
import {placeLabel, plainNumber, sideForce, span, sureFirst, verdictWord} from './wording.js';

/** Everything that a check came to, in the order in which a technician wants it. */
export function verdictLines(check: Check): readonly Shown[] {
	const found = documentOfCheck(check);
	if (!found.ok) return [line('Not measured.', 'strong'), line(found.sentence), ...overrideLines(check)];
	const figures = figuresOf(found.document);
	const findings = findingsOf(found.document, figures);
	return [
		line(`Verdict: ${verdictWord[figures.verdict]}${leadOf(figures)}`, toneOf(figures.atWorst)),
		...figures.probe.flatMap((one) => radiusLines(one, check)),
		...bandsPicture(figures.probe, check.limits, earlierRows(check)),
		...overrideLines(check),
		...zeroLine(check),
		...beforeAndAfter(check),
		...findings.flatMap(findingLines),
		...betweenLines(figures),
	];
}

const toneOf = (atWorst: Figures['atWorst']): Tone =>
	atWorst === 'good' ? 'good' : atWorst === 'usable' ? 'warn' : 'bad';

const leadOf = ({verdict, atWorst}: Figures): string =>
	verdict === 'undecided' && atWorst !== 'off-scale' ? `: ${sureFirst(atWorst)}` : '';

function radiusLines(one: RadiusFigures, {limits}: Check): Shown[] {
	const name = `${placeLabel(one.place)} ${plainNumber(one.radiusMm)} mm`;
	if (!isMeasured(one)) return [line(`${name}: off scale, no figures`, 'bad')];
	const word = (verdict: 'good' | 'usable' | 'beyond' | 'undecided', atWorst: 'good' | 'usable' | 'beyond') =>
		verdict === 'undecided' ? sureFirst(atWorst) : verdict;
	return [
		line(
			`${name}: pull ${sideForce(one.pullPct, one.pullUncertaintyPct)} (good to ${plainNumber(limits.pullGoodPct)}, usable to ${plainNumber(limits.pullUsablePct)} %): ${word(one.pullVerdict, one.pullAtWorst)}`,
		),
		line(
			`${name}: hold band ${span(one.bandPct, one.bandUncertaintyPct)}, breakaway ±${one.breakawayPct.toFixed(1)} % (good to ${plainNumber(limits.bandGoodPct)}, usable to ${plainNumber(limits.bandUsablePct)} %): ${word(one.bandVerdict, one.bandAtWorst)}`,
		),
		...(one.tiltSharePct === null
			? []
			: [
					line(
						`${name}: tilt's share of the pull ${sideForce(one.tiltSharePct, one.tiltShareUncertaintyPct ?? 0)}; torque ${one.torqueMicroNm.toFixed(0)} µN·m`,
						'dim',
					),
				]),
	];
}

function findingLines({found, likely, next, who}: Finding): Shown[] {
	return [
		line(found, 'strong'),
		...(likely === '' ? [] : [line(`Likely: ${likely}.`)]),
		line(`Next (${who}): ${next}.`),
	];
}

function betweenLines({betweenRadii, probe}: Figures): Shown[] {
	if (!betweenRadii) return [];
	const {en, differs, torqueSlopeMicroNmPerDeg: slope, neutralRadiusMm} = betweenRadii;
	const walls = probe
		.filter(isMeasured)
		.map(
			(one) =>
				`${placeLabel(one.place)}: ${(100 * one.wallShare.inner).toFixed(1)} / ${(100 * one.wallShare.outer).toFixed(1)} %`,
		);
	const leans = probe
		.filter(isMeasured)
		.flatMap((one) =>
			one.lean
				? [
						`${placeLabel(one.place)} ${one.lean.micrometres.toFixed(1)} µm${one.lean.degrees === null ? '' : ` (${one.lean.degrees.toFixed(2)}°)`}`,
					]
				: [],
		);
	return [
		line(
			`Between the radii: ${differs ? 'the pulls differ' : 'no difference shown'} (E_n ${en.toFixed(2)}); torque changes by ${slope.toFixed(2)} µN·m per degree${neutralRadiusMm === null ? '' : `; neutral at ${neutralRadiusMm.toFixed(0)} mm`}.`,
		),
		line(`Load on the inner / outer groove wall, ${walls.join(', ')}.`, 'dim'),
		...(leans.length === 0 ? [] : [line(`Sideways lean of the stylus: ${leans.join(', ')}.`, 'dim')]),
	];
}

/** What was gone past, with the reason; it stays beside the verdict for good. */
export function overrideLines(check: Check): Shown[] {
	const {visible} = progressOf(check);
	return visible.flatMap(({id, title}) => {
		const override = check.answers[id]?.override;
		return override ? [line(`Overridden: ${title} — ${override.reason}`, 'warn')] : [];
	});
}

function zeroLine(check: Check): Shown[] {
	return zeroOf(factsOfSeries(check, openSeries(check))).checked
		? []
		: [line('Zero not checked: the pull may be off by the zero of the gauge.', 'warn')];
}

/** Figures of an earlier series, where it has any. */
function figuresOfSeries(check: Check, series: Series): Figures | undefined {
	const found = documentOfCheck(check, series);
	return found.ok ? figuresOf(found.document) : undefined;
}

const closedSeries = (check: Check): readonly Series[] => check.series.filter((one) => one.closed);

function earlierRows(check: Check): BandRow[] {
	const last = closedSeries(check).findLast((one) => figuresOfSeries(check, one));
	const figures = last && figuresOfSeries(check, last);
	return (figures?.probe ?? [])
		.filter(isMeasured)
		.map((one) => ({...bandRow(one, true), label: `before ${placeLabel(one.place)}`}));
}

/** Before and after, side by side, for every earlier series with figures. */
function beforeAndAfter(check: Check): Shown[] {
	const now = figuresOfSeries(check, openSeries(check));
	return closedSeries(check).flatMap((series, index) => {
		const before = figuresOfSeries(check, series);
		const title = line(
			`Series ${index + 1}, closed: ${series.closed?.because ?? ''}${before ? '' : ' (no figures)'}`,
			'strong',
		);
		if (!before || !now) return [title];
		return [
			title,
			...before.probe.flatMap((one) => {
				const after = now.probe.find((other) => other.place === one.place);
				if (!isMeasured(one) || !after || !isMeasured(after)) return [];
				return [
					line(
						`${placeLabel(one.place)} pull: before ${sideForce(one.pullPct, one.pullUncertaintyPct)}, now ${sideForce(after.pullPct, after.pullUncertaintyPct)}`,
					),
					line(
						`${placeLabel(one.place)} band: before ${span(one.bandPct, one.bandUncertaintyPct)}, now ${span(after.bandPct, after.bandUncertaintyPct)}`,
					),
				];
			}),
		];
	});
}
