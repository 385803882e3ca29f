import {isDeckReady} from '../../pages/record-lines.js';
import {overriddenIn} from '../../pages/verdict-lines.js';
import {isPutBack} from '../../procedure/index.js';
import type {Issued} from '../../results/issued.js';
import {reportWords} from '../../words/reports.js';
import type {CheckSource} from '../check-source.js';
import {type LineBlock, sentenceBlock} from '../report.js';

const {overridden, verdict: said} = reportWords;

type WhyNotPlayed = Parameters<typeof said.mayBePlayed.no>[0]['because'][number];

/** What a reader asks of a verdict: what to do next, whether it may be played, and what may be wrong with it. */
export function answersOf(source: CheckSource): readonly LineBlock[] {
	const {check, issued} = source.record;
	// Nobody plays an invented arm.
	const play = check.practice ? [] : [sentenceBlock(playText(source), 'strong')];
	const still = overriddenIn(check).filter(({holds}) => holds);
	const titles = (isBack: boolean) => still.filter(({step}) => isPutBack(step) === isBack).map(({title}) => title);
	return [
		...nextText(source).map((text) => sentenceBlock(text, 'strong')),
		...play,
		...(issued ? caution(overridden.spoilsReadings, titles(false)) : []),
		...caution(overridden.spoilsPlay, titles(true)),
	];
}

const caution = (sentence: typeof overridden.spoilsPlay, steps: readonly string[]): readonly LineBlock[] =>
	steps.length === 0 ? [] : [sentenceBlock(sentence({steps}), 'warn')];

function nextText({record: {issued}, voids}: CheckSource): readonly string[] {
	if (voids?.voided) return [said.checkAgain];
	if (!issued) return [said.finish];
	return issued.findings.slice(0, 1).map(said.doNext);
}

function playText(source: CheckSource): string {
	const {issued} = source.record;
	const because = [...ofCheck(source), ...(issued ? ofFigures(issued) : [])];
	if (because.length > 0 || !issued) return said.mayBePlayed.no({because});
	const {atWorst} = issued.figures;
	return said.mayBePlayed[atWorst === 'good' || atWorst === 'usable' ? atWorst : 'withBias'];
}

const ofCheck = ({record, putBackAt, voids}: CheckSource): readonly WhyNotPlayed[] => [
	...(isDeckReady(record, putBackAt) ? [] : ['deck' as const]),
	...(voids?.voided ? ['void' as const] : []),
	...(record.issued ? [] : ['unfinished' as const]),
];

/** A pull that bias carries does not speak against it; what stands on its limit is taken as beyond. */
function ofFigures({figures: {probe, atWorst}, findings}: Issued): readonly WhyNotPlayed[] {
	if (atWorst === 'off-scale') return ['off-scale'];
	const isCarried = findings.some(({code}) => code === 'playable-with-bias');
	const judged = [
		...(isCarried ? [] : probe.map((one) => ['pull', one.pullVerdict, one.pullAtWorst, one.pullWouldDecide] as const)),
		...probe.map((one) => ['band', one.bandVerdict, one.bandAtWorst, one.bandWouldDecide] as const),
	];
	const found = new Set(
		judged
			.filter(([_what, _verdict, worst]) => worst === 'beyond')
			.map(([what, verdict, _worst, decides]): WhyNotPlayed => {
				return verdict === 'undecided' && decides && !('onLimit' in decides) ? 'undecided' : what;
			}),
	);
	// One that is beyond limits is enough.
	if (found.has('pull') || found.has('band')) found.delete('undecided');
	return [...found];
}
