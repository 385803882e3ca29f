import type {RemedyId} from '../../procedure/remedies.js';

/** What is said of a remedy. */
type RemedyWords = {
	/** What is to be done, in the middle of a sentence. */
	readonly name: string;
	/** How, in a sentence; empty where the name says it. */
	readonly how: string;
	/** The doing of it, at the head of a sentence. */
	readonly doing: string;
	/** What is left on the deck afterwards, and must be undone. */
	readonly left?: string;
};

const weighAgain = 'Set the tracking force again, guard on.';

/** What can be tried at the bench, by id. */
export const remedies: Readonly<Record<RemedyId, RemedyWords>> = {
	level: {
		name: 'level the armboard',
		how: 'Lower the high side at the feet. Read the level again.',
		doing: 'Levelling',
	},
	leads: {
		name: 'dress the leads',
		how: 'They hang free, touch nothing and have no twist at the arm.',
		doing: 'Dressing the leads',
	},
	bias: {
		name: 'make sure the bias is off',
		how: 'Quick to check: thread, weight and lever must not touch the arm.',
		doing: 'Making sure the bias is off',
	},
	damping: {
		name: 'look at the damping again',
		how: 'The paddle must not touch the fluid.',
		doing: 'Looking at the damping',
	},
	force: {
		name: 'set and weigh the tracking force again',
		how: 'Put the arm in its rest before you turn the counterweight.',
		doing: 'Setting the tracking force',
	},
	height: {name: 'set the height again', how: '', doing: 'Setting the height'},
	again: {name: 'touch nothing, probe again', how: '', doing: 'Probing again'},
	'gauge-foot': {
		name: "look at the gauge's foot and zero screw",
		how: 'The foot stands firm at its radius. Nobody turned the screw.',
		doing: 'Setting the gauge firm',
	},
	platter: {name: 'block the platter', how: 'It must not turn under the gauge.', doing: 'Blocking the platter'},
	'still-deck': {
		name: 'keep your hands off the deck',
		how: 'Block a sprung deck as far as its maker allows.',
		doing: 'Keeping the deck still',
	},
	'gauge-zero': {
		name: "find the gauge's zero",
		how: 'Take one turned round, or read the gauge free of the arm.',
		doing: "Finding the gauge's zero",
	},
	'half-force': {
		name: 'probe with half the force',
		how: 'Arm in its rest, turn the counterweight. Pull of the tilt halves. Pull of leads, bias or magnet stays.',
		doing: 'Halving the force',
		left: 'The force is still halved. Set it back before you play.',
	},
	'lead-loop': {
		name: 'centre the loop of the leads',
		how: 'Unlock the arm. Hold its finger lift halfway between both radii. Lay the loop so that it hangs slack there. Lock the arm again.',
		doing: 'Centring the loop of the leads',
	},
	'leads-off': {
		name: 'pull the leads off at their tags',
		how: 'Only leads that push on. Note their colours. Take the platter off first. Never tip a deck with platter or arm loose.',
		doing: 'Taking the leads off',
		left: 'The leads are still off. Push them on by their colours. Then check the phase.',
	},
	magnet: {
		name: 'look for a magnet or steel near the cartridge',
		how: 'Tools, clips, the platter, the gauge itself.',
		doing: 'Moving steel and magnets away',
	},
	'cartridge-weight': {
		name: "put a weight in the cartridge's place",
		how: `Same mass as the cartridge, no magnet. ${weighAgain}`,
		doing: 'Taking the cartridge out',
		left: 'The weight is still in the headshell. Put the cartridge back. Then set the force.',
	},
	lifter: {
		name: 'make sure the lifter is clear of the arm',
		how: 'Quick to check: at each radius, lower the lifter. Paper must pass between lifter and arm.',
		doing: 'Freeing the lifter',
	},
	'gauge-friction': {
		name: "look at the gauge's own friction",
		how: 'Compare with the smallest friction that the gauge ever showed.',
		doing: 'Freeing the gauge',
	},
	touching: {
		name: 'make sure guard and leads touch nothing',
		how: 'Paper must pass under the guard. Nothing may rub along the swing.',
		doing: 'Freeing guard and leads',
	},
	'along-swing': {
		name: 'find what touches along the swing',
		how: 'Look at leads, lifter, rest and linkage, at the bad end first.',
		doing: 'Freeing what touches at one end',
	},
	repeat: {
		name: 'to be sure, probe one radius again',
		how: 'Dress the leads. Guard clear, hands off the deck.',
		doing: 'Dressing the leads again',
	},
};
