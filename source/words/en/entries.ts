import type {Names} from '../../procedure/names.js';
import type {OffPlace, OnPlace} from '../../procedure/places.js';
import type {SideWord, StageId} from '../../procedure/step.js';
import type {IdOf, TickLine} from '../../procedure/step-ids.js';
import type {DoubtItemId} from '../../procedure/steps-still.js';
import {plural} from '../numbers.js';
import {found} from '../speaker.js';

/** The stages of a check. */
const stages: Readonly<Record<StageId, string>> = {
	resume: 'Welcome back',
	safe: 'Make safe',
	arm: 'The arm on the bench',
	tools: 'The gauge',
	mat: 'Mat',
	level: 'Level',
	damping: 'Damping',
	bias: 'Bias off',
	wires: 'Look along the arm',
	force: 'Tracking force',
	clearance: 'Gauge under the arm',
	probe: 'Probe',
	verdict: 'Verdict',
	'bias-on': 'Bias on',
	back: 'Put back',
	next: 'Next check',
};

/** Where rounds are taken; 'other' is the third place as documents call it. */
const places: Readonly<Record<OffPlace | OnPlace | 'other', string>> = {
	inner: 'inner',
	outer: 'outer',
	extra: 'third',
	other: 'third',
	closing: 'closing',
	'bias-outer': 'bias on, outer',
	'bias-middle': 'bias on, third',
	'bias-inner': 'bias on, inner',
};

/** The lines of the lists that are ticked. */
const ticks: {readonly [Id in IdOf<'ticks'>]: Readonly<Record<TickLine<Id>, string>>} = {
	safe: {
		amplifier: 'Amplifier off or muted',
		mains: 'Deck unplugged',
		record: 'Record, clamp and weight off the platter',
		platter: 'Platter blocked: it cannot turn',
		lock: 'Arm locked in its rest (no lock: tied softly)',
		rest: 'Arm in its rest, guard at hand',
	},
	wires: {
		upright: 'Arm upright, seen from the front (unipivot)',
		leads: 'Leads lie as always and touch nothing',
		lifter: 'Lifter down, clear of the tube',
		rest: 'Rest and its clip not in the way of the swing',
		screws: 'Headshell, cartridge, counterweight, pillar tight',
		air: 'Lid, fan and heating off; no static on mat or hands',
		static: 'No static on mat or hands',
	},
};

/** What is kept as it was typed: each side by the word that is typed for it, yes and no, how many rounds there are. */
const written: Omit<Names, 'options'> = {
	sides: {
		out: 'out',
		in: 'in',
		right: 'right',
		left: 'left',
		back: 'back',
		front: 'front',
		plus: 'plus',
		minus: 'minus',
	},
	yes: 'yes',
	no: 'no',
	rounds: (count) => plural(count, {one: '1 round', other: `${count} rounds`}),
};

/** What the two sides of a reading mean. */
const sides: Readonly<Record<SideWord, string>> = {
	out: 'the arm pushes out, toward the rim',
	in: 'the arm pushes in, toward the spindle',
	right: 'the right side is higher',
	left: 'the left side is higher',
	back: 'the back is higher',
	front: 'the front is higher',
	plus: "on the gauge's plus side",
	minus: "on the gauge's minus side",
};

/** What may have changed while a check was left. */
const inDoubt: Readonly<Record<DoubtItemId, string>> = {
	arm: 'arm (lengths, leads, bias device, radii)',
	cartridge: 'cartridge (guard, playing force)',
	tools: 'gauge, stylus scale or level',
	mat: 'mat',
	guard: 'guard',
	damping: 'damping',
	'bias-off': 'bias',
	wires: 'leads',
	height: 'height',
	'bias-set': 'bias setting',
	level: 'level',
	force: 'tracking force',
	room: 'room temperature',
};

/** A place by its id; one that is not known here stands for itself. */
export const placeName = (place: string): string => found(places, place) ?? place;

/** What is called how, by id. */
export const entries = {stages, places, ticks, written, sides, inDoubt};
