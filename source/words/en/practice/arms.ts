import type {LessonId, Looks} from '../../../practice/arms.js';

/** What an invented arm is called, and what it teaches; the lesson is told at the end. */
export const arms: Readonly<Record<LessonId, {readonly name: string; readonly lesson: string}>> = {
	'twisted-lead': {
		name: 'An arm with a twisted lead',
		lesson:
			'A twisted lead pushes it toward the spindle, the same at both radii. Only the middle of both limits shows it.',
	},
	'well-behaved': {
		name: 'A well-behaved arm',
		lesson: 'A sound arm has a little pull and a little friction too, far below too much.',
	},
	'stiff-wire': {
		name: 'An arm with stiff leads',
		lesson:
			'The leads act as a spring: they push outward at the inner radius, hardly at the outer. The friction is small.',
	},
	'sticky-bearing': {
		name: 'An arm with a sticky bearing',
		lesson: 'The arm sticks wherever it is: the limits lie far apart, with little pull in their middle.',
	},
	'sticks-and-pulls': {
		name: 'An arm that sticks and pulls',
		lesson: 'The arm sticks, and it pulls toward the spindle too. Only both limits tell the two apart.',
	},
	'tilted-deck': {
		name: 'A good arm on a tilted deck',
		lesson: 'The arm is sound. It leans with the deck, and the level tells how much.',
	},
	'bias-left-on': {
		name: 'An arm whose last user forgot something',
		lesson: 'The bias was still on. It makes a steady pull toward the rim.',
	},
	'paddle-left-in': {
		name: 'An arm with a trough of fluid',
		lesson: 'The paddle was in the fluid. The arm creeps, and the fluid holds it like a bad bearing.',
	},
	'lever-badly-set': {
		name: 'An arm with a weighted lever',
		lesson:
			'The lever stands at 8:30 at the outer radius, at 7:15 at the inner. There two fifths of its weight are lost.',
	},
	'worn-race': {
		name: 'An arm with a worn race',
		lesson: 'The friction is 2.5 times as large at the inner radius: the bearing is damaged there.',
	},
};

/** What is to be seen by looking at an arm, as it came and once something was done to it. */
export const looks: {readonly [Part in keyof Looks]: Readonly<Record<Looks[Part], string>>} = {
	wires: {
		'easy-loop': 'The leads leave the arm in an easy loop and touch nothing.',
		twisted: 'The leads are thin; one is twisted, and pushes the arm to one side.',
		'stiff-bow': 'The leads are thick and stand in a stiff bow behind the pivot.',
		tied: 'The leads are thick, and a tie holds them hard against the pillar.',
		dressed: 'The leads lie in a wide, easy loop without a twist.',
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
