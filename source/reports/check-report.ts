import type {CheckSource, Imprint} from './check-source.js';
import {aboutCheck, armName, footOf} from './parts/about.js';
import {biasPart} from './parts/bias-part.js';
import {cautionsPart} from './parts/cautions-part.js';
import {conditionsPart} from './parts/conditions-part.js';
import {deckPart} from './parts/deck-part.js';
import {beforeAndAfterPart, detailsPart, findingsPart} from './parts/findings-part.js';
import {methodPart} from './parts/method-part.js';
import {practicePart, titleOf} from './parts/practice-part.js';
import {readingsPart} from './parts/readings-part.js';
import {verdictPart} from './parts/verdict-part.js';
import {yearsPart} from './parts/years-part.js';
import {type Report, typed} from './report.js';

/** Everything about one check, the verdict first. */
export function checkReport(source: CheckSource, imprint: Imprint): Report {
	const {check, issued} = source.record;
	return {
		title: titleOf(check, 'Tonearm check: ', typed(armName(check))),
		about: aboutCheck(check),
		sections: [
			verdictPart(source),
			...practicePart(source),
			...findingsPart(source),
			...beforeAndAfterPart(source),
			...biasPart(source),
			...yearsPart(source),
			deckPart(source),
			...readingsPart(check),
			...(issued ? [detailsPart(issued)] : []),
			conditionsPart(check),
			cautionsPart,
			methodPart(check, issued),
		],
		foot: footOf(imprint, check),
	};
}
