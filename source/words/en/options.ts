import type {OptionNames} from '../../procedure/names.js';

const yesNo = {no: 'no', yes: 'yes'};

/** What the options of each choice are called. */
export const options: OptionNames = {
	'tools-name': {'bench-set': 'bench set'},
	'done-since': {
		nothing: 'nothing I know of',
		levelled: 'deck levelled',
		leads: 'leads dressed',
		bearing: 'bearing serviced',
		cartridge: 'cartridge changed',
		moved: 'deck moved to another place',
		other: 'something else',
	},
	'arm-pivot-way': {
		nulls: 'from both null radii',
		offset: 'from the offset angle and one null radius',
	},
	'arm-pivot-place': {
		'right-rear': 'right rear (the usual place)',
		right: 'right',
		rear: 'straight behind',
		'left-rear': 'left rear',
		left: 'left',
		'left-front': 'left front',
		front: 'straight in front',
		'right-front': 'right front',
	},
	'arm-bearing': {
		gimbal: 'gimbal (two crossed axes)',
		unipivot: 'unipivot (one point)',
		'multi-point': 'several points or balls',
		other: 'other, or not known',
	},
	'arm-gravity-centre': {
		near: 'about level with the pivot',
		far: 'well below or above it',
	},
	'arm-loading': {
		gravity: 'the counterweight (gravity)',
		spring: 'a spring',
	},
	'arm-auto-stop': yesNo,
	'arm-wire-path': {
		inside: 'inside the column',
		'free-loop': 'in a free loop',
	},
	'arm-wire-stiffness': {
		limp: 'limp, hangs by itself',
		medium: 'medium',
		stiff: 'stiff, springs back',
	},
	'arm-bias-device': {
		none: 'none',
		'weight-on-thread': 'weight on a thread',
		'weighted-lever': 'weighted lever with pulley',
		spring: 'spring',
		magnet: 'magnet',
		other: 'other',
	},
	'arm-damping': yesNo,
	'deck-sprung': yesNo,
	'gauge-mount': {
		stands: 'it stands',
		hangs: 'it hangs',
		clamped: 'it is clamped to the deck',
		hand: 'it is pushed by hand',
	},
	'gauge-unit': {
		percent: 'percent of tracking force',
		mN: 'millinewtons (mN)',
		gf: 'grams (gram-force)',
	},
	'gauge-sign': {
		'arm-out': 'push of the arm, + toward the rim',
		'arm-in': 'push of the arm, + toward the spindle',
		'hand-out': 'push of my hand when the arm starts to move, + toward the rim',
		'hand-in': 'push of my hand when the arm starts to move, + toward the spindle',
	},
	'gauge-turns': {
		inner: 'yes, at both radii',
		outer: 'yes, at the outer radius only (spindle in the way)',
		no: 'no: read its zero with the arm in its rest',
	},
	mat: {
		on: 'the mat stays on',
		'on-steel': 'it must stay on: steel platter, or strong magnet',
		off: 'take the mat off',
	},
	'guard-on': {
		on: 'the guard is on',
		'no-guard': 'this cartridge has no guard',
	},
	weighed: {
		with: 'guard on, included in the reading',
		without: 'guard off, or scale zeroed on it',
	},
	'guard-account': {
		again: 'weigh again with the guard on',
		add: "add the guard's known mass",
	},
};
