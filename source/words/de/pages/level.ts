import type {Tilt} from '../../../measures/level.js';
import type {Place} from '../../../procedure/places.js';
import {inDegrees, plainNumber, printsAsZero, rounded} from '../../numbers.js';
import {radiusName, sideForce} from '../figures.js';

const axes = {
	leftRight: {name: 'Links nach rechts', plus: 'rechts', minus: 'links', plusSide: 'Rechts', minusSide: 'Links'},
	frontBack: {name: 'Vorn nach hinten', plus: 'hinten', minus: 'vorn', plusSide: 'Hinten', minusSide: 'Vorn'},
};

/** The level of the deck. */
export const levelFound = {
	tilt: ({axis, tiltDeg, zeroErrorDeg}: Pick<Tilt, 'tiltDeg' | 'zeroErrorDeg'> & {axis: keyof typeof axes}) => {
		const {name, plus, minus} = axes[axis];
		const side = tiltDeg > 0 ? plus : minus;
		const tilt = printsAsZero(tiltDeg, 2) ? 'waagrecht' : `${side} ${inDegrees(Math.abs(tiltDeg), 2)} höher`;
		const error = zeroErrorDeg === null ? 'aus einer Messung nicht bekannt' : inDegrees(Math.abs(zeroErrorDeg), 2);
		return `${name}: ${tilt}; Eigenfehler der Wasserwaage ${error}`;
	},
	share: ({
		place,
		sharePct,
		uncertaintyPct,
		allowedPct,
	}: {
		place: Place;
		sharePct: number;
		uncertaintyPct: number;
		allowedPct: number;
	}) =>
		`Zug aus dieser Neigung, ${radiusName(place)}: ${sideForce(sharePct, uncertaintyPct)} (erlaubt ± ${plainNumber(allowedPct)} %)`,
	/** Which side goes down, and how much at the feet. */
	lower: ({axis, tiltDeg, mmPer100}: {axis: keyof typeof axes; tiltDeg: number; mmPer100: number}) =>
		`${tiltDeg > 0 ? axes[axis].plusSide : axes[axis].minusSide} senken: um ${rounded(mmPer100, 1)} mm je 100 mm Fußabstand.`,
	errorsDiffer: ({apartDeg}: {apartDeg: number}) =>
		`Quer und längs weicht der Eigenfehler der Wasserwaage um ${inDegrees(apartDeg, 2)} ab. Seite vertippt?`,
	fine: 'Genau waagrecht.',
	passes: 'Waagrecht: genügt.',
	fails: 'Nicht waagrecht genug.',
};
