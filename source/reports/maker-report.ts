import {noVerdictLines} from '../pages/verdict-lines.js';
import {documentOfCheck} from '../results/document-of-check.js';
import type {Document} from '../results/document-schema.js';
import {isMeasured, type MeasuredRadius, type RadiusFigures} from '../results/figures-types.js';
import type {Issued} from '../results/issued.js';
import {placeLabel} from '../words/step-text.js';
import {forceWithWay, plainNumber, sideForce, span} from '../words/wording.js';
import {blocksOfShown} from './blocks-of-shown.js';
import type {CheckSource, Imprint} from './check-source.js';
import {aboutCheck, armName, footOf} from './parts/about.js';
import {bandsBlock} from './parts/bands-block.js';
import {conditionsPart} from './parts/conditions-part.js';
import {beforeAndAfterPart} from './parts/findings-part.js';
import {methodPart} from './parts/method-part.js';
import {deckNotice, voidNotices} from './parts/notices.js';
import {overridesTable} from './parts/overrides-part.js';
import {practiceNotices, titleOf} from './parts/practice-part.js';
import {readingsPart} from './parts/readings-part.js';
import {ruledOutPart} from './parts/ruled-out-part.js';
import {yearsPart} from './parts/years-part.js';
import {type Block, type Cell, type Report, type Section, sentence, typed} from './report.js';

/** What a maker needs to judge a repair: what was measured, how, and what was ruled out; no word on blame. */
export function makerReport(source: CheckSource, imprint: Imprint): Report {
	const {check, issued} = source.record;
	return {
		title: titleOf(check, 'Measured on a tonearm: ', typed(armName(check))),
		about: aboutCheck(check),
		sections: [
			measuredPart(source),
			...(issued ? [ruledOutPart(check, issued.figures)] : []),
			...beforeAndAfterPart(source),
			...readingsPart(check),
			...yearsPart(source),
			conditionsPart(check),
			methodPart(check, issued),
		],
		foot: footOf(imprint, check),
	};
}

function measuredPart(source: CheckSource): Section {
	const {check, issued} = source.record;
	return {
		title: 'What was measured',
		blocks: [
			...practiceNotices(source),
			...voidNotices(source),
			...deckNotice(source),
			sentence(
				'For the maker of the arm: the figures of one check, with all that was ruled out before it. The page does not judge who or what is to blame.',
			),
			...(issued ? figuresOf(source, issued) : blocksOfShown(noVerdictLines(check), {table: '', picture: ''})),
			...overridesTable(check),
		],
	};
}

function figuresOf(source: CheckSource, {figures, findings}: Issued): Block[] {
	const found = documentOfCheck(source.record.check);
	return [
		...(found.ok ? [figuresTable(figures.probe, found.document)] : []),
		...bandsBlock(source, figures.probe),
		...(findings.length === 0
			? []
			: [sentence('In words:', 'strong'), {kind: 'list', items: findings.map((one) => one.found)} as const]),
	];
}

/** One column a radius, so that the table stays narrow. */
function figuresTable(probe: readonly RadiusFigures[], document: Document): Block {
	const lines = linesFor(document);
	return {
		kind: 'table',
		caption: 'Figures, each with its ± for 95 %; percent is of the playing force',
		head: ['', ...probe.map(({place, radiusMm}) => `${placeLabel(place)} ${plainNumber(radiusMm)} mm`)],
		rows: lines.map(({name, of}) => [name, ...probe.map((one): Cell => (isMeasured(one) ? of(one) : 'off scale'))]),
	};
}

type FigureLine = {readonly name: string; readonly of: (figures: MeasuredRadius) => string};

function linesFor({arm, trackingForce: {playingMn}, probe}: Document): readonly FigureLine[] {
	const mn = (pct: number) => (pct / 100) * playingMn;
	return [
		{name: 'side pull', of: ({pullPct, pullUncertaintyPct}) => sideForce(pullPct, pullUncertaintyPct)},
		{
			name: 'the same as a force',
			of: ({pullPct, pullUncertaintyPct}) =>
				`${forceWithWay(mn(pullPct), 'mN', 2)} ± ${mn(pullUncertaintyPct).toFixed(2)} mN`,
		},
		{
			name: 'the same as a torque',
			of: ({torqueMicroNm, pullUncertaintyPct}) =>
				`${forceWithWay(torqueMicroNm, 'µN·m', 0)} ± ${(mn(pullUncertaintyPct) * arm.effectiveLengthMm).toFixed(0)} µN·m`,
		},
		{
			name: "tilt's share of the pull",
			of: ({tiltSharePct, tiltShareUncertaintyPct}) =>
				tiltSharePct === null ? 'not known' : sideForce(tiltSharePct, tiltShareUncertaintyPct ?? 0),
		},
		{name: 'hold band', of: ({bandPct, bandUncertaintyPct}) => span(bandPct, bandUncertaintyPct)},
		{
			name: 'breakaway, either way',
			of: ({breakawayPct, bandUncertaintyPct}) => span(breakawayPct, bandUncertaintyPct / 2),
		},
		{
			name: 'rounds that count',
			of: ({radiusMm}) => String(probe.find((one) => one.radiusMm === radiusMm)?.rounds.length ?? 0),
		},
	];
}
