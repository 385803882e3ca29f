import type {Topic} from '../topics.js';

/** Practice without a turntable, and the proof of the figures. */
export const practising: Topic = {
	name: 'practising',
	title: 'practice on an invented arm, proof of the figures',
	blocks: [
		'"armdrift practice" leads through the same check on an arm that lives in the program. Nothing can break, and at the end its truth stands beside what was found, with what to do better. The arm does what a real one would: it sticks, lets go, swings, creeps, and the gauge trembles within its step. Practice data lie in a folder of their own, are never mixed with real checks, and every screen and report of them says PRACTICE.',
		{
			rows: [
				[
					'first try',
					'one round at each radius, four limits in all, on a deck that somebody else has prepared; whether rightly, the readings will tell',
				],
				[
					'whole probe',
					'three rounds at each radius, as at the bench: they show how well rounds repeat, and the ± comes down',
				],
				['whole check', 'begins at the first line: the screen says what there is to see on the bench'],
			],
		},
		{
			rows: [
				['Left, Right', 'nudge the arm inward and outward by about 1 % of tracking force, to come near a limit'],
				[', .', 'the same in fine steps of about half a percent, to find it'],
				['!', 'do by hand what the question offers: turn the feet, take the bias weight off, lift the paddle'],
				['! at the verdict', 'show the truth of the arm, whether the ± held it, and what to do better'],
				['< > , .', 'the same nudges with --plain: a line of them is so many nudges, each until the arm is still'],
			],
		},
		'Nudge, wait until the arm is still, look. Where it comes back by itself the place before was the limit. Go there once more in fine steps, wait for five seconds, and type what the gauge showed, with its sign. Where every nudge comes back, the arm lies at its limit already: nudge it the other way first, and come back. Where large nudges let go twice, the screen names the key for finer ones: the friction may be small. While the field is empty a comma or a point nudges: type 0.5, not .5.',
		'There are ten arms, each with one lesson; you can have one of them without being told which. The same --seed gives the same arm the same draught and trembling, as long as the same is done to it.',
		{
			lines: [
				'armdrift practice --arms',
				'armdrift practice --on sticky-bearing --extent probe --seed 7',
				'armdrift report --practice --as html --out practice.html',
				'armdrift practice --prove 500',
			],
		},
		'--prove lets a scripted hand probe simulated arms whose truth is known, and prints as a table how often the figures hold it (about a minute for 500 arms). It does so in 64 ways: step, scatter, rounds, gauge set again or not. A force that wanders while the limits are sought is shown apart: 0.2 % of it takes about a tenth of a percent off the friction, which no ± holds.',
	],
};
