import type {Script} from './script.js';

/**
 * An invented check: arm, cartridge and readings of no real deck. Its readings are those of the worked example in
 * `test/findings/example.ts`, typed as a technician types them: sides of the level, guard left on in the weighing,
 * zero of the gauge by turning it, plus and minus of makers turned into a ± (a bound divided by √3 is the standard
 * uncertainty, JCGM 100:2008 4.3.7).
 */
export const northDeck: Script = {
	answers: {
		'arm-name': 'north deck',
		'arm-serial': '',
		'arm-length': '229 mm',
		'arm-pivot-distance': '211.3',
		'arm-offset': '',
		'arm-pivot-place': 'right-rear',
		'arm-bearing': 'gimbal',
		'arm-gravity-centre': 'near',
		'arm-loading': 'gravity',
		'arm-auto-stop': 'no',
		'arm-wire-path': 'inside',
		'arm-wire-stiffness': 'supple',
		'arm-bias-device': 'weighted-lever',
		'arm-damping': 'no',
		'deck-sprung': 'no',
		'radius-inner': '65',
		'radius-outer': '140',
		'radius-extra': '',
		'cartridge-name': 'blue one',
		'playing-force': '18 mN',
		'force-low': '16 mN',
		'force-high': '20 mN',
		'cartridge-compliance': '15',
		'cartridge-cantilever': '6',
		'guard-mass': '0.5 g',
		'guard-depth': '1',
		'tools-name': 'bench set',
		'gauge-unit': 'percent',
		'gauge-step': '0.5',
		'gauge-top': '16',
		'gauge-sign': 'arm-out',
		// 1 % standard uncertainty × √3
		'gauge-scale-uncertainty': '1.7320508',
		'gauge-nudge': '0.5',
		'scale-step': '0.01 g',
		// With the step of 0.01 g (δ/√12, JCGM 100:2008 F.2.2.1) it makes a standard uncertainty of 0.5 % of 18 mN:
		// √(0.09² − (0.0980665/√12)²) × √3 mN.
		'scale-uncertainty': '0.14797209 mN',
		'level-step': '0.05',
		'room-temperature': '21',
		'room-note': '',
		mat: 'off',
		'mat-thickness': '2',
		'level-lr-1': '0.1 right',
		'level-lr-2': '0.05 right',
		'level-fb-1': '0.05 back',
		'level-fb-2': '0.05 front',
		'bias-off': 'yes',
		'guard-on': 'on',
		weighed: 'with',
		'force-reading': '18 mN',
		clearance: '4.5',
		'zero-way': 'turn',
		// centre +7 as it stands, −6.5 turned: a zero of +0.25
		'zero-first-inner': '+4',
		'zero-first-outer': '+10',
		'zero-turned-inner': '-3.5',
		'zero-turned-outer': '-9.5',
		'back-force': '18 mN',
	},
	rounds: {
		inner: [
			['4 out', '10 out'],
			['4,5 out', '+10'],
			['+4', '9.5 out'],
		],
		outer: [
			['3 out', '7.5 out'],
			['3 out', '7 out'],
			['3.5 out', '7.5 out'],
		],
		closing: [['4 out', '10 out']],
		extra: [['3.5 out', '8.5 out']],
		'bias-outer': [['9 out', '13 out']],
		'bias-middle': [['8 out', '13 out']],
		'bias-inner': [['6.5 out', '12 out']],
	},
};

/** What is added where the bias is set too: the weight, and where the lever stands at each radius. */
export const biasAnswers: Script['answers'] = {
	verdict: 'bias',
	'bias-drag': '0.3',
	'bias-radius-middle': '',
	'bias-weight': '2.4',
	'bias-set': 'third notch',
	'bias-clock-outer': '3:00',
	'bias-clock-middle': '2:15',
	'bias-clock-inner': '1:30',
	'bias-result': 'keep:1',
};

/** The same script with some answers or rounds otherwise. */
export const northDeckWith = (answers: Script['answers'], rounds: Script['rounds'] = {}): Script => ({
	answers: {...northDeck.answers, ...answers},
	rounds: {...northDeck.rounds, ...rounds},
});
