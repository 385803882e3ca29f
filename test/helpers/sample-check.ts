import type {Script} from './script.js';

/**
 * An invented check: arm, cartridge and readings of no real deck. Its readings are those of the worked example in
 * `test/results/example.ts`, typed as a technician types them: sides of the level, guard left on in the weighing,
 * one round with the gauge turned, plus and minus of makers turned into a ± (a bound divided by √3 is the standard
 * uncertainty, JCGM 100:2008 4.3.7).
 */
export const northDeck: Script = {
	answers: {
		'arm-name': 'north deck',
		'arm-serial': '',
		'arm-length': '233 mm',
		'arm-pivot-distance': '215.4',
		'arm-offset': '',
		'arm-pivot-place': 'right-rear',
		'arm-bearing': 'gimbal',
		'arm-gravity-centre': 'near',
		'arm-loading': 'gravity',
		'arm-auto-stop': 'no',
		'arm-wire-path': 'inside',
		'arm-wire-stiffness': 'limp',
		'arm-bias-device': 'weighted-lever',
		'arm-damping': 'no',
		'deck-sprung': 'no',
		'radius-inner': '68',
		'radius-outer': '136',
		'radius-extra': '',
		'cartridge-name': 'blue one',
		'playing-force': '21 mN',
		'force-low': '18 mN',
		'force-high': '24 mN',
		'cartridge-compliance': '12',
		'cartridge-cantilever': '5.5',
		'guard-mass': '0.4 g',
		'guard-depth': '1.3',
		'tools-name': 'bench set',
		'gauge-unit': 'percent',
		'gauge-step': '0.5',
		'gauge-top': '20',
		'gauge-sign': 'arm-out',
		'gauge-turns': 'inner',
		// 1 % standard uncertainty × √3
		'gauge-scale-uncertainty': '1.7320508',
		'gauge-nudge': '0.5',
		'scale-step': '0.01 g',
		// With the step of 0.01 g (δ/√12, JCGM 100:2008 F.2.2.1) it makes a standard uncertainty of 0.5 % of 21 mN:
		// √(0.105² − (0.0980665/√12)²) × √3 mN.
		'scale-uncertainty': '0.17513064 mN',
		'level-step': '0.05',
		'room-temperature': '21',
		'room-note': '',
		mat: 'off',
		'mat-thickness': '3',
		'level-lr-1': '0.15 right',
		'level-lr-2': '0.05 right',
		'level-fb-1': '0.05 back',
		'level-fb-2': '0.1 front',
		'bias-off': 'yes',
		'guard-on': 'on',
		'force-reading': '21 mN',
		// With the guard's depth of 1.3 mm the stylus stands 5.6 mm high.
		'guard-gap': '4.3',
		clearance: '5.6',
		'back-force': '21 mN',
	},
	rounds: {
		inner: [
			['3 out', '8.5 out'],
			// With the gauge turned, in its own sign.
			['-2,5', '-8'],
			['+3', '8 out'],
		],
		outer: [
			['1.5 out', '5.5 out'],
			['1.5 out', '5 out'],
			['2 out', '5.5 out'],
		],
		closing: [['2.5 out', '8 out']],
		extra: [['2 out', '6.5 out']],
		'bias-outer': [['7.5 out', '11 out']],
		'bias-middle': [['7 out', '11 out']],
		'bias-inner': [['6.5 out', '11.5 out']],
	},
};

/** What is added where the bias is set too: the weight, and where the lever stands at each radius. */
export const biasAnswers: Script['answers'] = {
	verdict: 'bias',
	'bias-radius-middle': '',
	'bias-weight': '2.4',
	'bias-set': 'third notch',
	'bias-clock-outer': '8:30',
	'bias-clock-middle': '7:45',
	'bias-clock-inner': '7:15',
	'bias-result': 'keep:1',
};

/** The same script with some answers or rounds otherwise. */
export const northDeckWith = (answers: Script['answers'], rounds: Script['rounds'] = {}): Script => ({
	answers: {...northDeck.answers, ...answers},
	rounds: {...northDeck.rounds, ...rounds},
});
