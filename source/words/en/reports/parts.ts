import type {AtWorst} from '../../../results/figures-types.js';
import {listed, percent, plainNumber, rounded, scaleAndMn} from '../../numbers.js';
import {forceWithWay} from '../figures.js';

/** What speaks against playing: the deck, the check, or what it found. */
type WhyNotPlayed = keyof typeof whyNotPlayed;
const whyNotPlayed = {
	deck: 'the deck is not put back',
	void: 'this check does not count',
	unfinished: 'the arm was not measured to the end',
	'off-scale': 'a reading ran off the scale',
	pull: 'there is too much pull',
	band: 'there is too much friction',
	undecided: 'more readings must show that it is usable',
};

/** Sentences and names of the parts of a report. */
export const parts = {
	verdict: {
		nextCheck: ({day, because}: {day: string; because: string}) => `Next check: ${day}. ${because}`,
		/** What was issued may name who does it. */
		doNext: ({who, next}: {who: string; next: string}) =>
			`Do this next${next.includes(who) ? '' : ` (${who})`}: ${next}.`,
		finish: 'Do this next (technician): finish the check.',
		checkAgain: 'Do this next (technician): check the arm again.',
		mayBePlayed: {
			no: ({because}: {because: readonly WhyNotPlayed[]}) =>
				`May it be played: no, because ${listed(because.map((one) => whyNotPlayed[one]))}.`,
			good: 'May it be played: yes, because pull and friction are good.',
			usable: 'May it be played: yes, because pull and friction are usable.',
			withBias: 'May it be played: yes, once the bias is set, because it carries the pull.',
		},
		limitsOfPull: ({caption, goodPct, usablePct}: {caption: string; goodPct: number; usablePct: number}) =>
			`${caption} Pull: good to ${goodPct} %, usable to ${usablePct} %.`,
	},

	deck: {
		ready: 'The deck was put back and is ready to play.',
		notReady: 'The deck is not ready to play.',
		notReadyBesideVerdict: 'Deck not ready to play: its put-back list is not done.',
		ended: ({outcome}: {outcome: string}) => `How the check ended: ${outcome}.`,
		done: 'done',
		notDone: 'not done',
		leftSo: ({reason, answer}: {reason: string; answer: string}) => `left so: ${reason} (answered: ${answer})`,
	},

	findings: {
		likely: ({likely}: {likely: string}) => `Likely: ${likely}.`,
	},

	overridden: {
		/** Beside the verdict, by the titles of the steps. */
		spoilsReadings: ({steps}: {steps: readonly string[]}) =>
			`Overridden, so the readings may be wrong: ${listed(steps)}.`,
		spoilsPlay: ({steps}: {steps: readonly string[]}) => `Overridden while the deck was put back: ${listed(steps)}.`,
		still: 'still\u00A0true',
		earlier: ({series}: {series: number}) => `earlier, in series ${series}`,
	},

	readings: {
		placeWithSetting: ({place, setting}: {place: string; setting: string}) => `${place}, setting ${setting}`,
		notRead: 'not read',
		struck: ({reason}: {reason: string}) => `struck out: ${reason}`,
	},

	/** Under what it was measured. */
	conditions: {
		groups: {
			room: 'Room, mat and level',
			prepared: 'Prepared',
			force: 'Guard, tracking force, clearance',
			zero: 'Zero of the gauge, read free',
			biasOn: 'Bias on',
			arm: 'Arm',
			cartridge: 'Cartridge',
			tools: 'Gauge and tools',
		},
		ticked: {yes: 'yes', no: 'no', open: 'not answered'},
		overridden: ({answer}: {answer: string}) => `${answer} (overridden)`,
		carried: ({carriedMn, playingMn}: {carriedMn: number; playingMn: number}) =>
			carriedMn === 0
				? 'The arm floated: the gauge carried nothing.'
				: `The gauge carried ${scaleAndMn(carriedMn)}, ${percent((100 * carriedMn) / playingMn, 1)} of the playing force.`,
	},

	/** For the maker of the arm. */
	maker: {
		purpose:
			'For the maker of the arm: the figures of one check, and what was ruled out. This page does not judge who or what is to blame.',
		inWords: 'In words:',
		radius: ({place, radiusMm}: {place: string; radiusMm: number}) => `${place} ${plainNumber(radiusMm)} mm`,
		figures: {
			pull: 'pull',
			force: 'the same as a force',
			torque: 'the same as a torque',
			tiltShare: "tilt's share of the pull",
			band: 'friction',
			breakaway: 'breakaway, either way',
			rounds: 'rounds that count',
		},
		force: ({mn, uncertaintyMn}: {mn: number; uncertaintyMn: number}) =>
			`${forceWithWay(mn, 'mN', 2)} ± ${rounded(uncertaintyMn, 2)} mN`,
		torque: ({microNm, uncertaintyMicroNm}: {microNm: number; uncertaintyMicroNm: number}) =>
			`${forceWithWay(microNm, 'µN·m', 0)} ± ${rounded(uncertaintyMicroNm, 0)} µN·m`,
		offScale: 'off scale',
		notKnown: 'not known',
	},

	/** An arm over its checks. */
	years: {
		onlyCheck: 'This is the only check so far that counts.',
		noFigures: ({outcome}: {outcome: string}) => `no figures (${outcome})`,
		voidBecause: ({reason}: {reason: string}) => `void: ${reason}`,
		notKnown: 'not known',
		radius: ({radiusMm}: {radiusMm: number}) => `${plainNumber(radiusMm)} mm`,
		offScale: 'off scale',
		noVerdict: 'none',
		verdicts: {good: 'good', usable: 'usable', beyond: 'too much', 'off-scale': 'off scale'} satisfies Record<
			AtWorst,
			string
		>,
		undecided: {
			good: 'good',
			usable: 'usable, maybe good',
			beyond: 'maybe too much',
			'off-scale': 'maybe off scale',
		} satisfies Record<AtWorst, string>,
	},
};
