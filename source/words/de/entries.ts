import type {Names} from '../../procedure/names.js';
import type {OffPlace, OnPlace} from '../../procedure/places.js';
import type {SideWord, StageId} from '../../procedure/step.js';
import type {IdOf, TickLine} from '../../procedure/step-ids.js';
import type {DoubtItemId} from '../../procedure/steps-still.js';
import {plural} from '../numbers.js';
import {found} from '../speaker.js';

/** The stages of a check. */
const stages: Readonly<Record<StageId, string>> = {
	resume: 'Wieder da',
	safe: 'Absichern',
	arm: 'Der Arm auf der Werkbank',
	tools: 'Kraftmesser',
	mat: 'Matte',
	level: 'Waagrecht',
	damping: 'Dämpfung',
	bias: 'Antiskating aus',
	wires: 'Am Arm entlangsehen',
	force: 'Auflagekraft',
	clearance: 'Kraftmesser unterm Arm',
	probe: 'Messen',
	verdict: 'Urteil',
	'bias-on': 'Antiskating an',
	back: 'Spielbereit machen',
	next: 'Nächste Prüfung',
};

/** Where rounds are taken; 'other' is the third place as documents call it. */
const places: Readonly<Record<OffPlace | OnPlace | 'other', string>> = {
	inner: 'innen',
	outer: 'außen',
	extra: 'dritter',
	other: 'dritter',
	closing: 'Schluss',
	'bias-outer': 'Antiskating an, außen',
	'bias-middle': 'Antiskating an, dritter',
	'bias-inner': 'Antiskating an, innen',
};

/** The lines of the lists that are ticked. */
const ticks: {readonly [Id in IdOf<'ticks'>]: Readonly<Record<TickLine<Id>, string>>} = {
	safe: {
		amplifier: 'Verstärker aus oder stumm',
		mains: 'Netzstecker gezogen',
		record: 'Platte, Klemme und Gewicht vom Teller',
		platter: 'Teller blockiert: er dreht nicht',
		lock: 'Arm in der Stütze verriegelt (ohne Riegel: weich angebunden)',
		rest: 'Arm in der Stütze, Nadelschutz bereit',
	},
	wires: {
		upright: 'Arm aufrecht, von vorn gesehen (Einpunktlager)',
		leads: 'Litzen liegen wie immer und berühren nichts',
		lifter: 'Lift unten, frei vom Rohr',
		rest: 'Stütze und Bügel dem Schwenk nicht im Weg',
		screws: 'Headshell, Tonabnehmer, Gegengewicht, Säule fest',
		air: 'Haube ab, Lüfter und Heizung aus; nichts statisch geladen',
		static: 'Matte und Hände ohne statische Ladung',
	},
};

/** What is kept as it was typed: each side by the word that is typed for it, yes and no, how many rounds there are. */
const written: Omit<Names, 'options'> = {
	sides: {
		out: 'außen',
		in: 'innen',
		right: 'rechts',
		left: 'links',
		back: 'hinten',
		front: 'vorn',
		plus: 'plus',
		minus: 'minus',
	},
	yes: 'ja',
	no: 'nein',
	rounds: (count) => plural(count, {one: '1 Runde', other: `${count} Runden`}),
};

/** What the two sides of a reading mean. */
const sides: Readonly<Record<SideWord, string>> = {
	out: 'der Arm drückt nach außen, zum Rand',
	in: 'der Arm drückt nach innen, zur Tellerachse',
	right: 'rechts ist höher',
	left: 'links ist höher',
	back: 'hinten ist höher',
	front: 'vorn ist höher',
	plus: 'auf der Plusseite des Kraftmessers',
	minus: 'auf der Minusseite des Kraftmessers',
};

/** What may have changed while a check was left. */
const inDoubt: Readonly<Record<DoubtItemId, string>> = {
	arm: 'Arm (Längen, Litzen, Antiskating, Radien)',
	cartridge: 'Tonabnehmer (Nadelschutz, Kraft)',
	tools: 'Kraftmesser, Tonarm- oder Wasserwaage',
	mat: 'Matte',
	guard: 'Nadelschutz',
	damping: 'Dämpfung',
	'bias-off': 'Antiskating',
	wires: 'Litzen',
	height: 'Höhe',
	'bias-set': 'Einstellung des Antiskatings',
	level: 'Waagrecht',
	force: 'Auflagekraft',
	room: 'Raumtemperatur',
};

/** A place by its id; one that is not known here stands for itself. */
export const placeName = (place: string): string => found(places, place) ?? place;

/** What is called how, by id. */
export const entries = {stages, places, ticks, written, sides, inDoubt};
