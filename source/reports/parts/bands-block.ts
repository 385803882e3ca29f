import {bandsShown, lastBands} from '../../pages/band-rows.js';
import {earlierRows} from '../../pages/before-and-after.js';
import {isMeasured, type RadiusFigures} from '../../results/figures-types.js';
import type {CheckSource} from '../check-source.js';
import type {Block} from '../report.js';

/** The hold bands beside those of the series before and of the last check, with how surely their middles are known. */
export function bandsBlock({record: {check}, history}: CheckSource, probe: readonly RadiusFigures[]): Block[] {
	const measured = probe.filter(isMeasured);
	return bandsShown(probe, check.limits, [...earlierRows(check), ...lastBands(history)]).flatMap((shown): Block[] => {
		if (shown.kind !== 'bands') return [];
		const rows = shown.rows.map((row, index) => ({...row, pullUncertaintyPct: measured[index]?.pullUncertaintyPct}));
		const caption = `${shown.caption} Limits of the pull: good to ${shown.goodPct} %, usable to ${shown.usablePct} %.`;
		return [{kind: 'picture', title: 'Hold bands', drawing: {...shown, rows, caption}, isTold: true}];
	});
}
