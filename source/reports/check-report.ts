import {reportWords} from '../words/reports.js';
import type {CheckSource, Imprint} from './check-source.js';
import {aboutCheck, armName, imprinted, runningHead} from './parts/about.js';
import {conditionsPart} from './parts/conditions-part.js';
import {cautionsPart, deckPart} from './parts/deck-part.js';
import {beforeAndAfterPart, biasOnPart, detailsPart, findingsPart, practicePart} from './parts/findings-part.js';
import {methodPart} from './parts/method-part.js';
import {readingsPart} from './parts/readings-part.js';
import {aboutSheet, sheetParts} from './parts/sheet-part.js';
import {verdictPart} from './parts/verdict-part.js';
import {yearsPart} from './parts/years-part.js';
import {around, type Report} from './report.js';

/** Everything about one check: the customer's sheet, then all that a technician wants, the verdict first. */
export function checkReport(source: CheckSource, imprint: Imprint): Report {
	const {check, issued} = source.record;
	const isPractice = check.practice !== undefined;
	return {
		title: around(armName(check), (arm) => reportWords.titles.check({arm, isPractice})),
		running: runningHead(armName(check), check),
		about: aboutSheet(source),
		sheet: sheetParts(source),
		sections: [
			{
				title: reportWords.sheet.rest,
				blocks: [{kind: 'facts', caption: reportWords.captions.about, facts: aboutCheck(check)}],
			},
			verdictPart(source),
			...practicePart(source),
			...findingsPart(source),
			...beforeAndAfterPart(source),
			...biasOnPart(source),
			...yearsPart(source),
			deckPart(source),
			...readingsPart(check),
			...(issued ? [detailsPart(issued)] : []),
			conditionsPart(check),
			cautionsPart,
			methodPart(check, issued),
		],
		foot: reportWords.about.foot(imprinted(imprint, check)),
	};
}
