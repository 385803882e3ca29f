import type {Facts} from '../procedure/facts.js';
import {zeroOf} from '../procedure/hold-limits.js';
import {gaugeUnitOf, signOfPlus} from '../procedure/readings.js';
import {units} from '../units.js';

/** The zero of the gauge in its own sign, or that nobody looked at it. */
export function zeroText(facts: Facts): string {
	const {zero, checked} = zeroOf(facts);
	if (!checked) return "'Zero not checked' will stand beside the pull.";
	const side = zero === 0 ? '' : zero * signOfPlus(facts) > 0 ? ' plus' : ' minus';
	const size = Math.abs(Number(zero.toPrecision(4)));
	return `Zero of the gauge: ${size} ${units[gaugeUnitOf(facts)].label}${side}; it is taken off every reading.`;
}
