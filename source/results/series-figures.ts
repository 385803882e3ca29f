import constants from '../../shared/constants.json' with {type: 'json'};
import {closingRound} from '../measures/closing-round.js';
import {roundCentresPct} from '../measures/hold-band.js';
import {centreReading, expandedUncertainty, zeroBudget} from '../measures/uncertainty.js';
import type {ClosingFigures, ZeroFigures} from './figures-types.js';
import {readingOf, roundsRead, type SeriesRead} from './series-read.js';

/** The zero of the gauge in its own unit, its uncertainty for 95 %; both null where nobody looked. */
export function zeroFigures({zero, known, settings: {factor}}: SeriesRead): ZeroFigures {
	if (zero.source === 'unchecked') return {source: zero.source, zero: null, zeroUncertainty: null};
	const uncertaintyPct =
		zero.source === 'turned'
			? expandedUncertainty(zeroBudget(roundsRead(zero.at), known)).uncertaintyPct
			: constants.normalQuantile975.value * zero.standardPct;
	return {source: zero.source, zero: zero.pct / factor, zeroUncertainty: uncertaintyPct / factor};
}

/** The closing round against the others at its radius; null without one, and where its radius is off scale. */
export function closingFigures({onScale, settings}: SeriesRead): ClosingFigures | null {
	const at = onScale.find(({radius}) => radius.rounds.some(({closing}) => closing));
	if (!at) return null;
	const used = at.radius.rounds.filter(({gauge}) => gauge !== 'turned');
	const middles = (isClosing: boolean): number[] =>
		roundCentresPct(
			used.filter(({closing = false}) => closing === isClosing),
			settings.factor,
		);
	const othersPct = middles(false);
	const groupsPct = onScale.flatMap((one) => [one === at ? othersPct : one.usedPct, one.turnedPct]);
	const [centrePct = 0] = middles(true);
	const reading = centreReading(readingOf(settings));
	return closingRound({centrePct, othersPct, groupsPct, reading, settingUp: settings.settingUp});
}
