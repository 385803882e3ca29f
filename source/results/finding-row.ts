import type {DiagnosisFacts} from './diagnosis-facts.js';
import type {PlaceName} from './document-schema.js';

/** Who acts on a finding. */
export type Who = 'owner' | 'technician' | 'maker';

/** Where a finding holds, and the values that tell of it, in base units. */
export type Held = {readonly places: readonly PlaceName[]; readonly values: unknown};

/**
 * One finding as data; what is said of it stands in `words/` by its code. Rows look at the facts alone, work out no
 * physics, and stand in order of weight.
 */
export type FindingRow = {
	readonly code: string;
	readonly who: Who;
	/**
	 * What it means for the bias. 'after-cure': its cure changes the arm's own pull or its friction, so a bias set before
	 * has to be set once more after it. 'carries': bias was seen to carry the pull. 'none': nothing.
	 */
	readonly bias: 'after-cure' | 'carries' | 'none';
	/** Nothing, or no place, where it does not hold. */
	readonly find: (facts: DiagnosisFacts) => Held | undefined;
};

export const holds = ({find}: FindingRow, facts: DiagnosisFacts): boolean => (find(facts)?.places.length ?? 0) > 0;

export const bothEnds = ['inner', 'outer'] as const satisfies readonly PlaceName[];
