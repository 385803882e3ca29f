import type {Topic} from '../topics.js';

/** Practice without a turntable, and the proof of the figures. */
export const practising: Topic = {
	name: 'practising',
	title: 'practice on an invented arm, proof of the figures',
	blocks: [
		'"armdrift practice" leads through the same check on an invented arm. Nothing can break. At the end the truth stands beside what you found, with what to do better. The arm does what a real one would: it sticks, lets go, swings and creeps. The gauge trembles within its step. Practice data have a folder of their own, and are never mixed with real checks. Every screen and report of them says PRACTICE.',
		{
			rows: [
				[
					'first try',
					'one round at each radius, four limits in all. Somebody else prepared the deck: the readings tell whether rightly',
				],
				[
					'whole probe',
					'three rounds at each radius, as at the bench. They show how well rounds repeat, and the ± gets smaller',
				],
				['whole check', 'begins at the first step: the screen says what there is to see on the bench'],
			],
		},
		{
			rows: [
				['Left, Right', 'nudge the arm inward and outward by about 1 % of tracking force, to come near a limit'],
				[', .', 'the same in fine steps of about half a percent, to find it'],
				['!', 'do with your hands what the question offers: turn the feet, take the bias weight off, lift the paddle'],
				['! at the verdict', 'show the truth of the arm, whether the ± held it, and what to do better'],
				['< > , .', 'the same nudges with --plain: each character of a line is one nudge, until the arm is still'],
			],
		},
		'Nudge, wait until the arm is still, then look. Where it comes back by itself, the place before was the limit. Go there once more in fine steps, and wait for five seconds. Type what the gauge showed, with its sign. Where every nudge comes back, the arm is at its limit already. Nudge it the other way first, then come back. Where large nudges let go twice, the friction may be small: the screen names the key for fine ones. In an empty field a comma or a point nudges: type 0.5, not .5.',
		'There are ten arms, each with one lesson; you can have one without being told which. With the same --seed, the same arm gets the same draught and trembling, if you do the same to it.',
		{
			lines: [
				'armdrift practice --arms',
				'armdrift practice --on sticky-bearing --extent probe --seed 7',
				'armdrift report --practice --as html --out practice.html',
				'armdrift practice --prove 500',
			],
		},
		'--prove lets the program probe simulated arms whose truth is known (about a minute for 500 arms). It prints how often the ± holds that truth, as a table. It does so in 64 ways: step, scatter, rounds, gauge set again or not. A force that wanders while the limits are sought has a table of its own. A wander of 0.2 % takes about a tenth of a percent off the friction, which no ± holds.',
	],
};
