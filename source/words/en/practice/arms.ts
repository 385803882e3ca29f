import type {LessonId, Looks} from '../../../practice/arms.js';

/** What an invented arm is called, and what it teaches; the lesson is told at the end. */
export const arms: Readonly<Record<LessonId, {readonly name: string; readonly lesson: string}>> = {
	'twisted-lead': {
		name: 'An arm with a twisted lead',
		lesson:
			'A twist pushes it toward the spindle, the same at both radii: no single reading shows it, the middle of the two limits does.',
	},
	'well-behaved': {
		name: 'A well-behaved arm',
		lesson: 'A sound arm still has a little pull and a little friction: both are far inside their limits.',
	},
	'stiff-wire': {
		name: 'An arm with a stiff wire',
		lesson: 'The wire pulls like a spring: toward the rim inside, hardly at all outside, while friction is small.',
	},
	'sticky-bearing': {
		name: 'An arm with a sticky bearing',
		lesson:
			'The arm holds wherever it is put: the two limits lie far apart, and their centre says that it pulls little.',
	},
	'sticks-and-pulls': {
		name: 'An arm that sticks and pulls',
		lesson:
			'Friction and a pull toward the spindle at once: the arm reads differently wherever it rests, and only both limits tell the two apart.',
	},
	'tilted-deck': {
		name: 'A good arm on a tilted deck',
		lesson: 'The arm is sound: it leans with the deck, and the level says by how much.',
	},
	'bias-left-on': {
		name: 'An arm whose last user forgot something',
		lesson: 'The bias was still on: a steady pull toward the rim at both radii.',
	},
	'paddle-left-in': {
		name: 'An arm with a trough of fluid',
		lesson: 'The paddle stood in the fluid: the arm creeps, and the skin of the fluid holds it like a bad bearing.',
	},
	'lever-badly-set': {
		name: 'An arm with a weighted lever',
		lesson:
			'The lever points to half past eight outside and to a quarter past seven inside, where two fifths of its weight are lost.',
	},
	'worn-race': {
		name: 'An arm with a worn race',
		lesson: 'Friction is two and a half times as large inside as outside: a damaged place in the bearing.',
	},
};

/** What is to be seen by looking at an arm, as it came and once something was done to it. */
export const looks: {readonly [Part in keyof Looks]: Readonly<Record<Looks[Part], string>>} = {
	wires: {
		'easy-loop': 'The leads leave the arm in an easy loop and touch nothing.',
		twisted: 'The leads are thin; one is twisted, and pushes the arm to one side.',
		'stiff-bow': 'The leads are thick and stand in a stiff bow behind the pivot.',
		tied: 'The leads are thick, and a cable tie holds them hard against the pillar.',
		dressed: 'The leads lie in a wide, easy loop, their twist taken out.',
	},
	bias: {
		none: 'The arm has no bias device.',
		'weight-on-thread': 'A small weight hangs on its thread, and the thread is taut.',
		'lever-unweighted': 'The thread runs over a pulley to a lever with a weight; the weight lies beside the deck.',
		on: 'The weight hangs on, and the thread is taut.',
		off: 'The weight lies beside the deck, the thread hangs slack.',
	},
	damping: {
		none: 'The arm has no damping.',
		in: 'The paddle dips into the fluid of its trough.',
		out: 'The paddle hangs clear of the fluid.',
	},
};
