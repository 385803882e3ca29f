import type {BiasProblem} from '../../measures/bias-fit.js';
import {isAbove} from '../../measures/compare.js';
import {clockDeg, clockText} from '../../measures/lever.js';
import {type LeverFit, leverFit} from '../../measures/lever-fit.js';
import {biasDeviceOf} from '../../procedure/bias-devices.js';
import {onRadii} from '../../procedure/bias-on.js';
import type {Facts} from '../../procedure/facts.js';
import {radiusOf} from '../../procedure/places.js';
import {listed, plainNumber} from '../../words/wording.js';
import {type LeverAt, line, type Shown} from '../shown-lines.js';
import {worthwhilePct} from './advice.js';
import {askedShares, followsSkating, leverDoubt} from './lever-doubt.js';

/** How lever or thread stood at each radius, in degrees of the clock face or between thread and stub. */
function anglesOf(facts: Facts): readonly LeverAt[] {
	const {reads} = biasDeviceOf(facts);
	if (reads === undefined) return [];
	return onRadii(facts).flatMap(({place, radiusMm}) => {
		const radius = radiusOf(place);
		const deg =
			reads === 'clock' ? clockDeg(facts.text(`bias-clock-${radius}`) ?? '') : facts.number(`bias-angle-${radius}`);
		return deg === undefined ? [] : [{radiusMm, clockDeg: deg}];
	});
}

const percent = (share: number): string => (100 * share).toFixed(0);

/** Raising the weight turns the lever toward 12 o'clock: back on the right half of the face, on on the left. */
const isRaised = (byDeg: number, deg: number): boolean => (deg % 360 < 180 ? byDeg < 0 : byDeg > 0);

/** A turn of the lever as hours of the clock face. */
const hours = (deg: number): string => {
	const size = Math.abs(deg) / 30;
	return `${plainNumber(Number(size.toFixed(1)))} ${size === 1 ? 'hour' : 'hours'}`;
};

function threadAdvice({turned}: LeverFit, places: readonly LeverAt[], reads: 'clock' | 'angle'): string {
	const first = places[0]?.clockDeg ?? 90;
	if (reads === 'angle')
		return `with the guide moved so that the thread stands ${Math.abs(turned.byDeg)}° ${turned.byDeg > 0 ? 'wider' : 'narrower'} to the stub, at most ${turned.worstPct.toFixed(1)} % would be left`;
	const raised = isRaised(turned.byDeg, first);
	return `with a ${raised ? 'shorter' : 'longer'} thread, so that the lever stands ${hours(turned.byDeg)} of the clock ${raised ? 'higher' : 'lower'}, at most ${turned.worstPct.toFixed(1)} % would be left`;
}

function heldAdvice({heldPct}: LeverFit, reads: 'clock' | 'angle'): string {
	const where = reads === 'clock' ? 'about level' : 'about square to the stub';
	const how =
		reads === 'clock'
			? "shift the pulley, as far as its maker allows, so that the thread runs nearer to the arm's pivot and the lever travels less, and make up for it with weight"
			: 'move the loop farther from the arm, so that the angle changes less';
	return `if it stayed ${where} over the whole record: ${heldPct.toFixed(1)} % (${how})`;
}

type LeverOf = {
	readonly problem: BiasProblem;
	readonly facts: Facts;
	/** A change of bias between radii smaller than this cannot be told, in percent. */
	readonly leastChangePct: number;
	/** The setting was chosen, so nothing is to be done now. */
	readonly isKept?: boolean;
};

/** What lever or thread do to the bias over the record, and what another place of the pulley would gain. */
export function leverLines({problem, facts, leastChangePct, isKept = false}: LeverOf): Shown[] {
	const {reads} = biasDeviceOf(facts);
	const places = anglesOf(facts);
	if (reads === undefined || places.length === 0) return [];
	const stands = listed(
		places.map(
			({radiusMm, clockDeg: deg}) =>
				`${reads === 'clock' ? clockText(deg) : `${plainNumber(deg)}°`} at ${plainNumber(radiusMm)} mm`,
		),
	);
	const used = problem.bias.map(
		({radiusMm}) => places.find((one) => one.radiusMm === radiusMm)?.clockDeg ?? Number.NaN,
	);
	const isWhole = !used.some(Number.isNaN);
	const fit = isWhole ? leverFit(problem, used) : undefined;
	const doubt = isWhole ? leverDoubt({problem, anglesDeg: used, reads, leastChangePct}) : [];
	const name = reads === 'clock' ? 'The lever' : 'The thread';
	const asked = percent(Math.min(...askedShares(problem)));
	return [
		...(reads === 'clock'
			? [{kind: 'lever', places, caption: `The lever stands at ${stands}.`} as const]
			: [line(`Thread to stub: ${stands}.`)]),
		...(fit
			? [
					line(
						`${name} lets ${percent(fit.shares[0])} to ${percent(fit.shares[1])} % of the weight act, where skating asks for ${asked} to 100 %.`,
					),
				]
			: []),
		...doubt,
		// What another place would gain is worked out from the angles: of no use where they do not explain the readings.
		...(fit && doubt.length === 0
			? gains({fit, places, reads, isKept, isAlike: followsSkating(problem, used, leastChangePct)})
			: []),
	];
}

type GainsOf = {
	readonly fit: LeverFit;
	readonly places: readonly LeverAt[];
	readonly reads: 'clock' | 'angle';
	readonly isKept: boolean;
	/** The lever does what skating asks for, as far as can be told. */
	readonly isAlike: boolean;
};

function gains({fit, places, reads, isKept, isAlike}: GainsOf): Shown[] {
	const isWorth = (worstPct: number) => isAbove(fit.nowPct - worstPct, worthwhilePct);
	const parts = [
		...(isWorth(fit.turned.worstPct) ? [threadAdvice(fit, places, reads)] : []),
		...(isWorth(fit.heldPct) ? [heldAdvice(fit, reads)] : []),
	];
	const left = `its best setting ${fit.nowPct.toFixed(1)} % is left;`;
	if (parts.length > 0) {
		const gained = `${left} ${parts.join('; ')}.`;
		return [line(isKept ? `For another time: at ${gained}` : `At ${gained} A guide: probe again after it.`)];
	}
	return isAlike
		? [line('Moving pulley or thread would gain nothing.', 'dim')]
		: [line(`At ${left} with the arm's own pull as it is, no other place of pulley or thread leaves less.`, 'dim')];
}
