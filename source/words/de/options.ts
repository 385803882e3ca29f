import type {OptionNames} from '../../procedure/names.js';

const yesNo = {no: 'nein', yes: 'ja'};

/** What the options of each choice are called. */
export const options: OptionNames = {
	'tools-name': {'bench-set': 'Werkbank-Satz'},
	'done-since': {
		nothing: 'nichts, soweit bekannt',
		levelled: 'Laufwerk waagrecht gestellt',
		leads: 'Litzen neu gelegt',
		bearing: 'Lager gewartet',
		cartridge: 'Tonabnehmer gewechselt',
		moved: 'Laufwerk versetzt',
		other: 'etwas anderes',
	},
	'arm-pivot-way': {
		nulls: 'aus beiden Nullradien',
		offset: 'aus Kröpfungswinkel und einem Nullradius',
	},
	'arm-pivot-place': {
		'right-rear': 'rechts hinten (üblich)',
		right: 'rechts',
		rear: 'gerade hinten',
		'left-rear': 'links hinten',
		left: 'links',
		'left-front': 'links vorn',
		front: 'gerade vorn',
		'right-front': 'rechts vorn',
	},
	'arm-bearing': {
		gimbal: 'kardanisch (zwei Achsen)',
		unipivot: 'Einpunktlager',
		'multi-point': 'mehrere Punkte oder Kugeln',
		other: 'anderes oder unbekannt',
	},
	'arm-gravity-centre': {
		near: 'etwa auf Höhe des Drehpunkts',
		far: 'deutlich darunter oder darüber',
	},
	'arm-loading': {
		gravity: 'Gegengewicht (Schwerkraft)',
		spring: 'eine Feder',
	},
	'arm-auto-stop': yesNo,
	'arm-wire-path': {
		inside: 'in der Säule',
		'free-loop': 'in freier Schlaufe',
	},
	'arm-wire-stiffness': {
		limp: 'schlaff, hängen durch',
		medium: 'mittel',
		stiff: 'steif, federn zurück',
	},
	'arm-bias-device': {
		none: 'keine',
		'weight-on-thread': 'Gewicht am Faden',
		'weighted-lever': 'Hebel mit Gewicht und Rolle',
		spring: 'Feder',
		magnet: 'Magnet',
		other: 'andere',
	},
	'arm-damping': yesNo,
	'deck-sprung': yesNo,
	'gauge-mount': {
		stands: 'er steht',
		hangs: 'er hängt',
		clamped: 'am Laufwerk geklemmt',
		hand: 'von Hand gedrückt',
	},
	'gauge-unit': {
		percent: 'Prozent der Auflagekraft',
		mN: 'Millinewton (mN)',
		gf: 'Gramm (Gramm-Kraft)',
	},
	'gauge-sign': {
		'arm-out': 'Druck des Arms, + zum Rand',
		'arm-in': 'Druck des Arms, + zur Tellerachse',
		'hand-out': 'Druck meiner Hand am Kraftmesser, wenn der Arm nachgibt, + zum Rand',
		'hand-in': 'Druck meiner Hand am Kraftmesser, wenn der Arm nachgibt, + zur Tellerachse',
	},
	'gauge-turns': {
		inner: 'ja, an beiden Radien',
		outer: 'ja, nur am äußeren Radius (Tellerachse im Weg)',
		no: 'nein: Nullanzeige ohne Arm lesen',
	},
	mat: {
		on: 'bleibt drauf',
		'on-steel': 'muss drauf bleiben: Stahlteller oder starker Magnet',
		off: 'abnehmen',
	},
	'guard-on': {
		on: 'ist drauf',
		'no-guard': 'dieser Tonabnehmer hat keinen',
	},
	weighed: {
		with: 'mit Nadelschutz',
		without: 'ohne Nadelschutz, oder Waage mit ihm auf null',
	},
	'guard-account': {
		again: 'mit Nadelschutz neu wiegen',
		add: 'bekannte Masse dazuzählen',
	},
};
