import {roundsApart} from '../measures/rounds-apart.js';
import {line, type Shown} from '../pages/shown-lines.js';
import {decimalsApart, fixed, units} from '../units.js';
import {plainNumber, stepDecimals} from '../words/wording.js';
import type {Document, ProbeRadius} from './document-schema.js';
import {isOffScale} from './series-read.js';
import {settingsOf} from './settings.js';

/** In the gauge's own unit, so that it can be checked against the readings as they were typed; undefined where they agree. */
function apartText({gauge}: Document, {rounds}: ProbeRadius): string | undefined {
	const asUsed = rounds.filter((round) => round.gauge !== 'turned');
	const found = roundsApart(asUsed, gauge.step, gauge.nudge ?? 0);
	if (!found) return;
	const {apart, usual} = found;
	const {label} = units[gauge.unit];
	const size = fixed(apart, decimalsApart(apart, usual, Math.max(1, stepDecimals(gauge.step))));
	return `their middles differ by ${size} ${label}, where up to ${plainNumber(usual)} ${label} is usual with this step and nudge`;
}

const onScale = (document: Document): ProbeRadius[] =>
	document.probe.filter((radius) => !isOffScale(radius, settingsOf(document)));

/**
 * Whether the rounds agree at every probe radius. Their spread is pooled, so where they do not agree at one of them, it
 * tells at no radius what more rounds or a finer step would bring.
 */
export const roundsAgree = (document: Document): boolean =>
	onScale(document).every((radius) => apartText(document, radius) === undefined);

/** That rounds do not agree: here, or at another radius, whose spread counts here too. */
export const apartLines = (document: Document, radiusMm: number): Shown[] =>
	onScale(document).flatMap((radius) => {
		const said = apartText(document, radius);
		if (said === undefined) return [];
		return radius.radiusMm === radiusMm
			? [line(`The rounds do not agree: ${said}. Take them again, or strike the odd one out.`, 'warn')]
			: [
					line(
						`At ${plainNumber(radius.radiusMm)} mm the rounds do not agree, and that widens the ± here: ${said}.`,
						'warn',
					),
				];
	});
