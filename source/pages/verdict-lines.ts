import type {Check} from '../check/check.js';
import {answerOf} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import {factsOfSeries, progressOf} from '../check/progress.js';
import {openSeries} from '../check/series.js';
import {stepById} from '../procedure/index.js';
import {documentOfCheck, partialDocument, seriesThatCounts} from '../results/document-of-check.js';
import {type Figures, figuresOf, isMeasured} from '../results/figures.js';
import type {Issued, IssuedFinding} from '../results/issued.js';
import {words} from '../words/index.js';
import {overriddenText, reasonText} from '../words/says.js';
import {listed, plainNumber, sureFirst, verdictWord} from '../words/wording.js';
import {bandsPicture, lastBands} from './band-rows.js';
import {beforeAndAfter, earlierRows} from './before-and-after.js';
import {biasLines} from './bias/lines.js';
import {issuedOf} from './issued.js';
import {detailLines, radiusTable} from './radius-lines.js';
import {line, type Shown, type Tone} from './shown-lines.js';
import {yearsOf} from './years/years-lines.js';
import {zeroText} from './zero-text.js';

/** Everything that a check came to, in the order in which a technician wants it; a filed one as it was issued. */
export function verdictLines(
	check: Check,
	issued: Issued | null = issuedOf(check),
	history: readonly PastCheck[] = [],
): readonly Shown[] {
	if (!issued) return unfinishedLines(check);
	const {figures, findings} = issued;
	const years = yearsOf(check, history, issued);
	return [
		line(headline(figures), toneOf(figures.atWorst)),
		radiusTable(figures.probe, check.limits),
		...notMeasured(check),
		...overrideLines(check),
		// What is to be done comes before all that only bears it out: on a small screen the rest is pages further.
		...findingLines(findings),
		...(figures.probe.some(({repeatability}) => repeatability === 'assumed')
			? [line(words.results.repeatabilityAssumed, 'dim')]
			: []),
		...zeroLine(check, figures),
		...(issued.form === 1 ? [] : setAnewLine(check)),
		...(years?.changes ?? []),
		...bandsPicture(figures.probe, check.limits, [...earlierRows(check), ...lastBands(history)]),
		...biasLines(check),
		...beforeAndAfter(check, figures),
		...(years ? [line('Over the years', 'strong'), ...years.trend, ...years.pictures] : []),
		...detailLines(figures),
	];
}

/** A check that was stopped in a series that was begun only: the figures are those of the one before. */
export function notMeasured(check: Check): Shown[] {
	if (!check.stopped || documentOfCheck(check, openSeries(check)).ok) return [];
	return [line('The last series was begun and not measured; these are the figures of the one before it.', 'warn')];
}

/** No verdict, but what there is all the same. */
const unfinishedLines = (check: Check): readonly Shown[] => [
	...noVerdictLines(check),
	...overrideLines(check),
	...figuresSoFar(check),
];

/** That there is no verdict, and why. */
export function noVerdictLines(check: Check): Shown[] {
	const found = documentOfCheck(check);
	return [
		line('No verdict: not measured to the end.', 'strong'),
		...(found.ok ? [] : [line(words.documents.missing[found.missing])]),
	];
}

/** What was measured in a check that came to no verdict. */
export function figuresSoFar(check: Check): Shown[] {
	const document = partialDocument(factsOfSeries(check, openSeries(check)));
	const probe = document ? figuresOf(document).probe : [];
	return [...(probe.length > 0 ? [radiusTable(probe, check.limits)] : []), ...bandsPicture(probe, check.limits)];
}

const toneOf = (atWorst: Figures['atWorst']): Tone =>
	atWorst === 'good' ? 'good' : atWorst === 'usable' ? 'warn' : 'bad';

/** What is sure comes first. */
export function headline({verdict, atWorst}: Figures): string {
	if (verdict !== 'undecided' || atWorst === 'off-scale') return `Verdict: ${verdictWord[verdict]}`;
	return `Verdict: ${sureFirst(atWorst)} (${verdictWord.undecided})`;
}

/** The gravest finding gives the one thing to do now; the others stand beside it without an action of their own. */
const findingLines = ([first, ...others]: readonly IssuedFinding[]): Shown[] =>
	first
		? [
				line(first.found, 'strong'),
				...(first.likely === '' ? [] : [line(`Likely: ${first.likely}.`)]),
				line(`Next: ${first.next}.`),
				...others.map(({found}) => line(`Also seen: ${found}`)),
			]
		: [];

/** Something that was gone past although it did not pass. */
export type Overridden = {
	readonly title: string;
	/** What did not pass. */
	readonly sentence: string;
	readonly reason: string;
	readonly series: number;
	/** Still so; else it was put right later. */
	readonly holds: boolean;
};

/** What was gone past, in order; it stays beside the verdict for good, also where it no longer holds. */
export function overriddenIn(check: Check): readonly Overridden[] {
	if (check.overrides.length === 0) return [];
	const {visible, stateOf} = progressOf(check);
	return check.overrides.map((given) => {
		const {step: id, at, series} = given;
		const step = visible.find((one) => one.id === id);
		const holds = step !== undefined && stateOf(step) === 'overridden' && answerOf(check, id)?.override?.at === at;
		const [sentence, reason] = [overriddenText(given), reasonText(given.reason)];
		return {title: stepById(id)?.title ?? id, sentence, reason, series, holds};
	});
}

/** What was gone past, in sentences. */
export const overrideLines = (check: Check): Shown[] =>
	overriddenIn(check).map(({title, sentence, reason, series, holds}) =>
		line(
			`${holds ? 'Overridden' : `Overridden earlier, in series ${series}`}: ${title}. ${sentence} Reason: ${reason}.`,
			holds ? 'warn' : 'plain',
		),
	);

/** What is known of the zero of the gauge. */
export const zeroLine = (check: Check, {zero}: Figures): Shown[] => [
	line(zeroText(zero, factsOfSeries(check, seriesThatCounts(check))), zero.source === 'unchecked' ? 'warn' : 'dim'),
];

/** What it costs that the gauge was not set anew for each round; nothing where it was. */
export function setAnewLine(check: Check): Shown[] {
	const found = documentOfCheck(check);
	if (check.setAnew || !found.ok) return [];
	const {document} = found;
	const anew = figuresOf({...document, gauge: {...document.gauge, setAnew: true}});
	const said = figuresOf(document).probe.flatMap((one, index) => {
		const other = anew.probe[index];
		return isMeasured(one) && other && isMeasured(other)
			? [
					`± ${one.pullUncertaintyPct.toFixed(1)} instead of ± ${other.pullUncertaintyPct.toFixed(1)} % at ${plainNumber(one.radiusMm)} mm`,
				]
			: [];
	});
	if (said.length === 0) return [];
	return [line(`The gauge was not set anew for each round: that costs the pull ${listed(said)}.`, 'dim')];
}
