import {inUnit, mm, plainNumber, readingText} from '../../numbers.js';

type Way = {readonly way: 'in' | 'out'};

const wayWord = {in: 'inward', out: 'outward'};

type GaugeShows = {readonly readingPct: number; readonly stepPct: number};

type Force = {readonly forceMn: number};

/** What the invented bench says beside a question. */
export const bench = {
	nothingBreaks: 'Nothing can break here: all is invented. At a real deck every line counts.',
	seen: ({seen}: {readonly seen: string}) => `On the bench: ${seen}`,
	reveal: 'Press ! to see what was hidden, and what to do better.',
	gauge: ({readingPct, stepPct, isTurned, state}: GaugeShows & {readonly isTurned: boolean; readonly state: string}) =>
		`The gauge${isTurned ? ', turned end for end,' : ''} shows ${readingText(readingPct, stepPct)} %; the arm: ${state}.`,
	/** The name of an arm that is not told. */
	hiddenArm: ({seed}: {readonly seed: number}) => `Hidden arm ${seed}`,
};

const still = (ms: number | null): string => (ms === null ? 'still' : `still for ${Math.floor(ms / 1000)} s`);

type Rest = {
	/** For how long it has been at rest; null where nobody needs to wait any longer. */
	readonly ms: number | null;
};

/** What the arm on the gauge does, in a few words. */
export const motion = {
	pushed: ({way}: Way) => `your finger pushes it ${wayWord[way]}`,
	swings: ({way}: Way) => `it swings ${wayWord[way]} by itself`,
	letsGo: 'it lets go',
	rests: ({ms}: Rest) => still(ms),
	wentBack: ({ms}: Rest) => `it let go and went back; ${still(ms)}`,
	/** With the key of the finer nudge that way, by its name: at the end of a sentence its sign would be lost. */
	nudgeFiner: ({way}: Way) => `it let go twice: nudge finer (${way === 'in' ? 'comma' : 'point'})`,
	holds: ({ms}: Rest) => `it holds, ${still(ms)}`,
};

/** What the instruments of the bench show. */
export const seen = {
	temperature: ({celsius}: {readonly celsius: number}) => `The thermometer shows ${plainNumber(celsius)} °C.`,
	matLies: ({lengthMm}: {readonly lengthMm: number}) =>
		`A mat of ${mm(lengthMm)} lies on the platter, which is of glass.`,
	mat: ({lengthMm}: {readonly lengthMm: number}) => `The mat measures ${mm(lengthMm)}.`,
	level: ({deg, high}: {readonly deg: number; readonly high: 'right' | 'left' | 'back' | 'front'}) =>
		deg === 0 ? 'The bubble stands in the middle: 0°.' : `The level shows ${plainNumber(deg)}°, high on the ${high}.`,
	guardOn: 'The guard now sits on the stylus.',
	scaleReady: 'The stylus scale stands ready.',
	scale: ({forceMn}: Force) => `The scale shows ${inUnit(forceMn, 'gf')}.`,
	scaleAtHeight: ({forceMn}: Force) => `At probe height the scale shows ${inUnit(forceMn, 'gf')}.`,
	scaleUnguarded: ({forceMn}: Force) => `Without the guard the scale shows ${inUnit(forceMn, 'gf', 2)}.`,
	clearance: ({lengthMm}: {readonly lengthMm: number}) =>
		`The ruler shows ${mm(lengthMm)} from the surface to the stylus.`,
	guardGap: ({lengthMm}: {readonly lengthMm: number}) => `The feeler shows ${mm(lengthMm)} under the guard.`,
	lifter: 'Paper passes between lifter and arm, at both radii.',
	swing: 'The arm swings over the record and touches nothing.',
	freeZero: ({readingPct, stepPct}: GaugeShows) =>
		`Free of the arm the gauge shows ${readingText(readingPct, stepPct)} %.`,
	biasWeight: ({g}: {readonly g: number}) =>
		`The weight that came with the arm is marked ${plainNumber(g)} g. Type any other to hang it on.`,
	lever: ({clock}: {readonly clock: string}) => `The lever points at ${clock}.`,
	thread: ({deg}: {readonly deg: number}) => `The angle between thread and bias pin is ${plainNumber(deg)}°.`,
};

type Did = {
	/** The deck stood level before the feet were turned. */
	readonly wasLevel: boolean;
};

/** What a hand can do to the deck, and what is said once it is done. */
export const hands = {
	levelled: {
		offer: 'Press ! to turn the feet until the armboard is level.',
		did: ({wasLevel}: Did) =>
			wasLevel
				? 'The deck was level already. Turn the level round: that shows its own error.'
				: 'You turned the feet. Read the level again, across and along.',
	},
	'damping-out': {offer: 'Press ! to lift the paddle clear of the fluid.', did: () => 'You lifted the paddle.'},
	'bias-off': {
		offer: 'Press ! to take the bias weight off and lay the thread clear.',
		did: () => 'You took the weight off.',
	},
	'bias-on': {
		offer: 'Press ! to hang the bias weight on, thread over its guide.',
		did: () => 'You hung the weight on.',
	},
	'pulley-moved': {
		offer: "Press ! to move the pulley so that the thread runs nearer to the arm's pivot.",
		did: () => 'You moved the pulley. The lever now moves a quarter as far.',
	},
	'leads-dressed': {offer: 'Press ! to dress the leads in a wide, easy loop.', did: () => 'You dressed the leads.'},
};

/** What invented things are called. */
export const known = {tools: 'invented bench'};
