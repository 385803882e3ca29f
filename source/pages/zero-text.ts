import type {Facts} from '../procedure/facts.js';
import {gaugeUnitOf, signOfPlus} from '../procedure/readings.js';
import type {ZeroFigures} from '../results/figures-types.js';
import {units} from '../units.js';

/** The zero of the gauge in its own sign, and how it was found; or that nobody looked at it. */
export function zeroText({source, zero, zeroUncertainty}: ZeroFigures, facts: Facts): string {
	if (source === 'unchecked' || zero === null) return zeroUnchecked;
	const side = zero === 0 ? '' : zero * signOfPlus(facts) > 0 ? ' plus' : ' minus';
	const size = Math.abs(Number(zero.toPrecision(2)));
	const {label} = units[gaugeUnitOf(facts)];
	const sure = zeroUncertainty === null ? '' : ` ± ${Number(zeroUncertainty.toPrecision(2))} ${label}`;
	return `Zero of the gauge, ${how[source]}: ${size} ${label}${side}${sure}; it is taken off every reading.`;
}

const how = {turned: 'found by turning it', stated: 'read free of the arm'} as const;

/** Where nobody looked at the zero. */
export const zeroUnchecked =
	'Zero of the gauge not checked: it may be half a percent off, or a step, and the ± of the pull holds that.';
