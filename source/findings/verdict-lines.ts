import type {Check} from '../check/check.js';
import {factsOfSeries, progressOf} from '../check/progress.js';
import {openSeries} from '../check/series.js';
import {zeroOf} from '../procedure/hold-limits.js';
import {bandsPicture} from './band-rows.js';
import {beforeAndAfter, earlierRows} from './before-and-after.js';
import {type Finding, findingsOf} from './diagnose.js';
import {documentOfCheck, partialDocument} from './document-of-check.js';
import {type Figures, figuresOf} from './figures.js';
import {detailLines, radiusTable} from './radius-lines.js';
import {line, type Shown, type Tone} from './shown-lines.js';
import {sureFirst, verdictWord} from './wording.js';

/** Everything that a check came to, in the order in which a technician wants it. */
export function verdictLines(check: Check): readonly Shown[] {
	const found = documentOfCheck(check);
	if (!found.ok) return unfinishedLines(check, found.sentence);
	const figures = figuresOf(found.document);
	const findings = findingsOf(found.document, figures);
	return [
		line(headline(figures), toneOf(figures.atWorst)),
		radiusTable(figures.probe, check.limits),
		...zeroLine(check),
		...overrideLines(check),
		...bandsPicture(figures.probe, check.limits, earlierRows(check)),
		...findings.flatMap(findingLines),
		...beforeAndAfter(check, figures),
		...detailLines(figures),
	];
}

/** No verdict, but what there is all the same. */
function unfinishedLines(check: Check, sentence: string): readonly Shown[] {
	const document = partialDocument(factsOfSeries(check, openSeries(check)));
	const probe = document ? figuresOf(document).probe : [];
	return [
		line('No verdict: not measured to the end.', 'strong'),
		line(sentence),
		...overrideLines(check),
		...(probe.length > 0 ? [radiusTable(probe, check.limits)] : []),
		...bandsPicture(probe, check.limits),
	];
}

const toneOf = (atWorst: Figures['atWorst']): Tone =>
	atWorst === 'good' ? 'good' : atWorst === 'usable' ? 'warn' : 'bad';

/** What is sure comes first. */
function headline({verdict, atWorst}: Figures): string {
	if (verdict !== 'undecided' || atWorst === 'off-scale') return `Verdict: ${verdictWord[verdict]}`;
	return `Verdict: ${sureFirst(atWorst)} (${verdictWord.undecided})`;
}

const findingLines = ({found, likely, next}: Finding): Shown[] => [
	line(found, 'strong'),
	...(likely === '' ? [] : [line(`Likely: ${likely}.`)]),
	line(`Next: ${next}.`),
];

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
