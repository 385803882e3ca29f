// A second, plain reading of the page of formulas, to catch what a first reading got wrong.
// It shares no code with the program.

import {betweenRadii} from './model-between.js';
import {biasAnyOffScale, biasOf} from './model-bias.js';
import {findingCodes} from './model-findings.js';
import {carried, clearance, levelPasses, readAxis} from './model-geometry.js';
import {closingOf} from './model-pool.js';
import {probeRow, workingsOf} from './model-probe.js';
import type {ModelDocument, ModelOutput} from './model-types.js';
import {zeroUncertainty} from './model-uncertainty.js';
import {pullLimits, worstOf} from './model-verdict.js';

export type {ModelDocument, ModelOutput} from './model-types.js';

export function model(document: ModelDocument): ModelOutput {
	const workings = workingsOf(document);
	const {setting, zero, zeroSource} = workings;
	const probe = document.probe.map((one) => probeRow(workings, one));
	const overall = worstOf(
		probe.flatMap((row) => [
			{verdict: row.pullVerdict, atWorst: row.pullAtWorst},
			{verdict: row.bandVerdict, atWorst: row.bandAtWorst},
		]),
	);
	const passes = document.level === undefined ? null : levelPasses(document, pullLimits(document).good);
	const closing = closingOf(document, setting.pool);
	const between = betweenRadii(setting, probe);
	const bias = biasOf(document, zero, probe);
	const expandedZero = zeroUncertainty(setting);
	const seen = {
		document,
		probe,
		levelPasses: passes,
		closing,
		between,
		bias,
		biasOffScale: biasAnyOffScale(document),
		overall,
	};
	return {
		scaleFactor: setting.f,
		carriedMn: carried(document),
		level:
			document.level === undefined || passes === null
				? null
				: {
						leftRight: readAxis(document.level.leftRightDeg),
						frontBack: readAxis(document.level.frontBackDeg),
						passes,
					},
		clearance: clearance(document),
		zero: {
			source: zeroSource,
			zero: zeroSource === 'unchecked' ? null : zero / setting.f,
			zeroUncertainty: expandedZero === null ? null : expandedZero / setting.f,
		},
		probe,
		closing,
		verdict: overall.verdict,
		atWorst: overall.atWorst,
		betweenRadii: between,
		bias: bias?.output ?? null,
		findings: findingCodes(seen).map((code) => ({code})),
	};
}
