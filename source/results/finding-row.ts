import type {DiagnosisFacts} from './diagnosis-facts.js';
import type {PlaceName} from './document-schema.js';

/** Who acts on a finding. */
export type Who = 'owner' | 'technician' | 'maker';

/** One finding as data. Rows look at the facts alone, work out no physics, and stand in order of weight. */
export type FindingRow = {
	readonly code: string;
	readonly who: Who;
	/** Places where it holds; none means that it does not fire. */
	readonly places: (facts: DiagnosisFacts) => readonly PlaceName[];
	/** What was found: value ± uncertainty, and the limit. */
	readonly say: (facts: DiagnosisFacts) => string;
	/** The likely cause; empty where the figures name none. */
	readonly likely: string;
	readonly next: (facts: DiagnosisFacts) => string;
};

/** The maker's time and the owner's money are not spent on one reading. */
export const repeatFirst =
	'the technician first repeats at one radius with the leads dressed anew, the guard not touching and the deck undisturbed';
