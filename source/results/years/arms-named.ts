import type {Profile} from '../../procedure/facts.js';
import {namesOfToday} from './arms.js';

/** An arm by the name that it has today, with those that it had before. */
export type KnownArm = {readonly name: string; readonly formerNames: readonly string[]};

/** What a name, or a part of one, leads to. */
export type ArmMeant =
	| {
			readonly found: 'one';
			/** Its name of today. */
			readonly arm: string;
			/** It was named in full, so that there is nothing to say about it. */
			readonly isExact: boolean;
	  }
	| {readonly found: 'several'; readonly arms: readonly string[]}
	| {readonly found: 'none'};

/**
 * Every arm that is known: those with a profile, then those that only have checks.
 * @param checked names under which arms were checked, as typed
 */
export function knownArms(checked: Iterable<string>, profiles: readonly Profile[]): readonly KnownArm[] {
	const today = [...checked].map(namesOfToday(profiles));
	const withProfile = profiles.filter(({kind}) => kind === 'arm');
	const known = new Map(withProfile.map(({name, formerNames = []}) => [name, {name, formerNames}]));
	for (const name of today) if (!known.has(name)) known.set(name, {name, formerNames: []});
	return [...known.values()];
}

/**
 * The arm that is meant by a name or a part of one, without regard to case and accents. A name of today in full comes
 * before a former one, a name in full before all that differ in case or accents, and these before parts. Pure.
 */
export function armMeant(typed: string, known: readonly KnownArm[]): ArmMeant {
	const wanted = typed.trim();
	const exact = known.find(({name}) => name === wanted) ?? known.find(({formerNames}) => formerNames.includes(wanted));
	if (exact) return {found: 'one', arm: exact.name, isExact: true};
	const part = folded(wanted);
	if (part === '') return {found: 'none'};
	const whole = withName(known, (name) => name === part);
	const arms = whole.length > 0 ? whole : withName(known, (name) => name.includes(part));
	const [arm] = arms;
	if (arm === undefined) return {found: 'none'};
	return arms.length === 1 ? {found: 'one', arm, isExact: false} : {found: 'several', arms};
}

const withName = (known: readonly KnownArm[], fits: (name: string) => boolean): readonly string[] =>
	known.filter(({name, formerNames}) => [name, ...formerNames].map(folded).some(fits)).map(({name}) => name);

/** Combining Diacritical Marks, as the canonical decomposition (Unicode Standard Annex 15, NFD) leaves them. */
const accents = /[\u0300-\u036F]/g;

/** Without case and accents, in the same way in every locale. */
const folded = (text: string): string => text.toLowerCase().normalize('NFD').replace(accents, '');
