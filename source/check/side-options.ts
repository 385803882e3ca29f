import type {Facts} from '../procedure/facts.js';
import type {Names} from '../procedure/names.js';
import {signOfPlus} from '../procedure/readings.js';
import type {Sides} from '../procedure/step.js';
import type {Label, PromptOption} from './says.js';

export type SideOption<L = Label> = PromptOption<L> & {
	/** Its letter in the language in use, and its sign. */
	readonly keys: readonly [letter: string, sign: '+' | '-'];
	/** What else is taken for it: its words and letters in any language. */
	readonly spelled: readonly string[];
};

/** Two sides, each with its letter and its sign: the sign that it has on this gauge. */
export function sideOptions(sides: Sides, facts: Facts, names: Names | undefined): readonly SideOption[] {
	const {plus, minus, sign} = sides;
	// Where a sign means nothing of itself, + is the side that stands first: so the number pad suffices.
	const isReversed = sign === 'of-gauge' && sides.words === 'direction' && signOfPlus(facts) === -1;
	return [plus, minus].map((side) => ({
		id: side.word,
		label: {id: 'side', values: {side: side.word}},
		keys: [(names?.sides[side.word] ?? side.word).charAt(0), (side === plus) === isReversed ? '-' : '+'],
		spelled: side.spelled,
	}));
}
