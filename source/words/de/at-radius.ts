import type {GaugeMount} from '../../procedure/readings.js';
import type {AtRadius, GaugeAtRadius} from '../../procedure/step-values.js';
import {inUnit} from '../numbers.js';

/** ' bei 68 mm', where the radius is known. */
export const atRadius = ({radiusMm}: AtRadius): string =>
	radiusMm === undefined ? '' : ` bei ${inUnit(radiusMm, 'mm')}`;

const places: Readonly<Record<GaugeMount, (place: string) => string>> = {
	stands: (place) => `Kraftmesser${place} aufstellen, Arm auflegen`,
	hangs: (place) => `Kraftmesser${place} aufhängen, Arm auflegen`,
	clamped: (place) => `Kraftmesser${place} festklemmen, Arm auflegen`,
	hand: (place) => `Arm schweben lassen, Nadel${place}`,
};

/** Where the gauge goes for the rounds at a radius, and the arm on it. */
export const placedAt = ({mount, radiusMm}: GaugeAtRadius): string =>
	places[mount](radiusMm === undefined ? '' : ` ${inUnit(radiusMm, 'mm')} von der Tellerachse`);
