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

const weighAgain = 'Then set the tracking force again, guard on.';

/** What can be tried at the bench, by id. */
export const remedies: Readonly<Record<RemedyId, RemedyWords>> = {
	level: {
		name: 'level the armboard',
		how: 'Lower the side that the level calls high, at the feet; then read the level again.',
		doing: 'Levelling',
	},
	leads: {
		name: 'dress the leads anew',
		how: 'They hang free, touch nothing, and do not twist where they leave the arm.',
		doing: 'Dressing the leads',
	},
	bias: {
		name: 'look whether the bias is right off',
		how: 'Look at it: thread, weight and lever must not touch the arm.',
		doing: 'Taking the bias off',
	},
	damping: {
		name: 'look at the damping again',
		how: 'Paddle and fluid must not touch.',
		doing: 'Looking at the damping',
	},
	force: {
		name: 'set and weigh the tracking force again',
		how: 'Arm in its rest before you turn the counterweight.',
		doing: 'Setting the tracking force',
	},
	height: {name: 'set the height anew', how: '', doing: 'Setting the height'},
	again: {name: 'touch nothing, only probe again', how: '', doing: 'Probing again'},
	'gauge-foot': {
		name: "look at the gauge's foot and zero screw",
		how: 'The foot stands firm on its mark; nobody turned the screw.',
		doing: 'Setting the gauge firm',
	},
	platter: {name: 'block the platter', how: 'The gauge stands on it.', doing: 'Blocking the platter'},
	'still-deck': {
		name: 'take hands off the deck',
		how: 'Block a sprung deck as far as its maker allows.',
		doing: 'Keeping the deck still',
	},
	'gauge-zero': {
		name: "find the gauge's zero",
		how: 'Turn the gauge end for end for one round, or read it free of the arm.',
		doing: "Finding the gauge's zero",
	},
	'half-force': {
		name: 'probe with half the force',
		how: 'Turn the counterweight. What leans halves; what leads, bias or a magnet make stays.',
		doing: 'Halving the force',
		left: 'The force is still halved. Set it back before the deck is played.',
	},
	'lead-loop': {
		name: 'let the leads hang slack at mid-record',
		how: 'Look where their free loop stands with the arm at mid-record, and centre it there.',
		doing: 'Centring the loop of the leads',
	},
	'leads-off': {
		name: 'push the leads off at their tags',
		how: 'Only where they push on. Note their colours. Platter off first; never tip a deck with platter or arm loose.',
		doing: 'Taking the leads off',
		left: 'The leads are still off. Push them on by their colours, then check the phase.',
	},
	magnet: {
		name: 'look for a magnet or steel near the cartridge',
		how: 'Tools, clips, the platter and the gauge itself.',
		doing: 'Moving steel and magnets away',
	},
	'cartridge-weight': {
		name: "put a weight in the cartridge's place",
		how: `Its own mass, no magnet in it. ${weighAgain}`,
		doing: 'Taking the cartridge out',
		left: 'The weight is still in the head. Put the cartridge back, then set the force.',
	},
	lifter: {
		name: 'look whether the lifter still touches',
		how: 'Lifter fully down, paper passes between it and the arm at both radii.',
		doing: 'Freeing the lifter',
	},
	'gauge-friction': {
		name: "look at the gauge's own friction",
		how: 'A free arm shows it: compare the smallest band that the gauge ever showed.',
		doing: 'Freeing the gauge',
	},
	touching: {
		name: 'look whether guard, cable or a lead touches',
		how: 'Paper passes under the guard; nothing rubs along the whole swing.',
		doing: 'Freeing guard, cable and leads',
	},
	'along-swing': {
		name: 'look along the swing for what touches',
		how: 'Leads, lifter, rest and stop linkage, most of all at the end that holds more.',
		doing: 'Freeing what touches at one end',
	},
	repeat: {
		name: 'repeat at one radius before you ask the maker',
		how: 'Leads dressed anew, guard not touching, deck undisturbed.',
		doing: 'Repeating with the leads dressed anew',
	},
};
