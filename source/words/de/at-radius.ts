import type {GaugeMount} from '../../procedure/readings.js';
import type {AtRadius, GaugeAtRadius} from '../../procedure/step-values.js';

/** ' at 68 mm', where the radius is known. */
export const atRadius = ({radiusMm}: AtRadius): string =>
	radiusMm === undefined ? '' : ` at ${Number(radiusMm.toFixed(1))} mm`;

const places: Readonly<Record<GaugeMount, string>> = {
	stands: 'Set the gauge',
	hangs: 'Hang the gauge',
	clamped: 'Clamp the gauge',
	hand: 'Float the arm, its stylus',
};

/** Where the gauge goes for the rounds at a radius, and the arm on it. */
export const placedAt = (at: GaugeAtRadius): string =>
	`${places[at.mount]}${atRadius(at)} from the spindle${at.mount === 'hand' ? '' : ', arm on it'}`;
