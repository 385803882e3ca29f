import {percent, plainNumber, scaleAndMn} from '../../numbers.js';
import {sideForce} from '../figures.js';

type Share = {readonly place: string; readonly pct: number; readonly uncertaintyPct: number};

/** Causes outside the arm, whether each can still be behind the readings, and by what that is known. */
export const ruledOut = {
	// Kept on one line each.
	out: 'ruled\u00A0out',
	open: 'not\u00A0ruled\u00A0out',
	notFitted: 'not\u00A0fitted',
	causes: {
		tilt: 'tilt of the deck',
		bias: 'bias device',
		damping: 'damping',
		zero: 'zero of the gauge',
		lifter: 'lifter touching the arm',
		force: 'wrong tracking force',
		clearance: 'a guard that touches',
		moved: 'something that moved during the probe',
	},
	/** What each line of the look along the arm rules out; a line without a name here stands by its own words. */
	lines: {
		upright: 'sideways lean of a unipivot',
		leads: 'leads that pull or rub',
		lifter: 'lifter touching the arm',
		rest: 'rest or clip in the way',
		screws: 'loose screws',
		air: 'draught or static',
		static: 'static on mat or hands',
	} as Readonly<Record<string, string>>,
	lineYes: ({line}: {line: string}) => `${line}: confirmed`,
	lineNo: ({line}: {line: string}) => `${line}: answered no`,
	lineOpen: ({line}: {line: string}) => `${line}: not answered`,
	levelNotRead: 'the level was not read',
	levelShares: ({shares, isPaired}: {shares: readonly Share[]; isPaired: boolean}) =>
		`its share of the pull: ${shares
			.map(({place, pct, uncertaintyPct}) => `${sideForce(pct, uncertaintyPct)} at the ${place} radius`)
			.join(', ')}${isPaired ? '' : "; read once, so the level's own error is in it"}`,
	noBias: 'the arm has none',
	biasOff: ({device, mistake}: {device: string; mistake: string}) =>
		`confirmed off (${device}). The usual mistake: ${mistake}`,
	biasOn: ({device}: {device: string}) => `${device}: still acting, or not confirmed`,
	noDamper: 'the arm has no damping',
	damperOff: 'confirmed free of the arm',
	damperOn: 'the damping was not confirmed free of the arm',
	weighed: ({carriedMn, playingMn}: {carriedMn: number; playingMn: number | undefined}) =>
		carriedMn === 0
			? 'the arm floated: the gauge carried nothing'
			: `weighed: the gauge carried ${scaleAndMn(carriedMn)}${playingMn === undefined ? '' : `, ${percent((100 * carriedMn) / playingMn, 1)} of the playing force`}`,
	clearanceNotMeasured: 'the clearance was not measured',
	clearance: ({stylusMm, lowMm, highMm}: {stylusMm: number; lowMm: number; highMm: number}) =>
		`stylus ${plainNumber(stylusMm)} mm above the surface (allowed ${plainNumber(lowMm)} to ${plainNumber(highMm)} mm)`,
	noClosing: 'no closing round with figures',
	closing: ({movedPct, allowedPct, tells}: {movedPct: number; allowedPct: number; tells: boolean}) =>
		`the closing round lay ${percent(Math.abs(movedPct), 2)} from the inner rounds (allowed ${percent(allowedPct, 2)})${tells ? '' : ': the rounds scatter too much to tell'}`,
	tried: ({number, because, did}: {number: number; because: string; did: string}) =>
		`Series ${number} ended (${because}). The arm was then probed again.${did === '' ? '' : ` ${did}`}`,
	nothingTried: 'No remedy was tried between series in this check.',
};
