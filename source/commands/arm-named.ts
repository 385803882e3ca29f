import type {PastCheck} from '../check/past-check.js';
import type {Shelf} from '../desk/shelf.js';
import {armMeant, knownArms} from '../results/years/arms-named.js';
import {saidBack} from '../visible-text.js';
import {words} from '../words/index.js';
import {refuseWith, sayFault} from './print.js';

const say = words.commands.armNamed;

/** The name that a command goes on with, or the exit status of its refusal. */
type ArmNamed =
	| {readonly ok: true; readonly arm: string; readonly isKnown: boolean}
	| {readonly ok: false; readonly status: number};

/**
 * The arm that a command line means by a name or a part of one: said where it was a part, refused where it may be several.
 * A name that fits nothing stays as it was typed, so far as it is said back.
 */
export function armNamed(typed: string, rows: readonly PastCheck[], shelf: Pick<Shelf, 'profiles'>): ArmNamed {
	const meant = armMeant(typed, knownArms(new Set(rows.map(({arm}) => arm)), shelf.profiles()));
	if (meant.found === 'several') return {ok: false, status: refuseWith(say.several({typed, arms: meant.arms}))};
	if (meant.found === 'none') return {ok: true, arm: saidBack(typed.trim()), isKnown: false};
	if (!meant.isExact) sayFault(say.taken({typed, arm: meant.arm}));
	return {ok: true, arm: meant.arm, isKnown: true};
}
