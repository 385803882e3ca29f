import limits from '../../../../../shared/limits.json' with {type: 'json'};
import {limitsOfMethod} from '../../reports/method.js';
import type {Topic} from '../topics.js';

/** A number and its sign stay on one line. */
const pct = (limit: {readonly value: number}): string => `${limit.value}\u00A0%`;

/** What the figures of the probe and of the bias mean. */
export const onFigures: readonly Topic[] = [
	{
		name: 'figures',
		title: 'how to read the figures and the verdict, limits of the method',
		blocks: [
			'All figures are percent of the playing force, and every ± is for 95 %.',
			{
				rows: [
					[
						'pull',
						`the middle of both limits: what leads, bearings and level do; out is toward the rim. Good to ${pct(limits.pullGoodPct)}, usable to ${pct(limits.pullUsablePct)}`,
					],
					[
						'friction',
						`the distance between the limits. Good to ${pct(limits.bandGoodPct)}, usable to ${pct(limits.bandUsablePct)}`,
					],
					['breakaway', 'half the friction: the force that just moves the arm either way'],
					[
						"tilt's share",
						`what the tilt of the deck makes of the pull. It stands beside the pull and is never taken off: level the deck instead. Good to a quarter of the good pull (${pct({value: limits.pullGoodPct.value / 4})})`,
					],
				],
			},
			'What counts as good or usable is a default of this program, from memory of trade practice. No published values were found. Change them in the settings. A verdict is given only where the whole ± of a figure has the same verdict:',
			{
				rows: [
					['good, usable', 'leave it'],
					['too much', 'the screen names the cause, what to do next and who does it'],
					[
						'undecided',
						'the ± reaches from one verdict into the next. First comes what is sure (usable, maybe good), then what would decide it. That is more rounds or a finer step. Where the figure lies just between, nothing would',
					],
				],
			},
			'Five different things have five words:',
			{
				rows: [
					['not measured', 'no reading was taken'],
					['off scale', 'the reading reached the end of the scale and gives no figure'],
					['undecided', 'the ± reaches from one verdict into the next'],
					['interrupted', 'the check was left before its end, and the deck was not put back'],
					['overridden', 'a step was passed all the same; the reason stands beside the verdict for good'],
				],
			},
			'Limits of the method:',
			...limitsOfMethod,
		],
	},
	{
		name: 'bias',
		title: 'setting the bias (anti-skating) device by readings',
		blocks: [
			'Start it at the verdict: for a sound arm at once, else under "another way". You then read with the bias device on. Where there is too much friction, cure that first: bias cannot be set finer than half of it.',
			'The groove drags at the stylus. The pivot does not lie in line with the groove, so the drag also turns the arm toward the spindle. Bias must cancel that. As part of the tracking force it is drag × φ. φ is the sine of the angle between the groove and the line from stylus to pivot. It follows from effective length and pivot distance alone. So each radius has a wanted reading: 100 × drag × φ percent, toward the rim. Own pull and bias together must make it.',
			'Figures and curve are percent of the playing force. The reading to set is printed as your gauge will show it, to its step. It is percent of the force that the gauge carries (guard included), with its own zero added.',
			{
				rows: [
					[
						'drag',
						'groove drag as part of the tracking force. Assumed: 0.30; you can set it from 0.15 to 0.60. No published figure could be read, so the picture shows ± 0.05 beside it. Set no finer than that',
					],
					['own pull', 'read in the probe, with the bias off'],
					['bias alone', 'reading with the bias on, less the own pull at that radius'],
					['left over', 'reading less wanted reading: above zero is too much bias, below zero too little'],
					[
						'best setting',
						'how many times the present bias leaves least over at any radius from 60 to 146 mm. The reading to set at each radius comes first, because a hand can set that',
					],
					['friction hides', 'half the largest friction. No setting can be read finer, so stop below it'],
					[
						'inner, outer wall',
						'how the load divides between the groove walls while a record plays. The walls carry what is left over, divided by the cosine of that angle: a little more',
					],
				],
			},
			'Each setting keeps its readings. The best one is marked, and you can go back to it.',
			'For a weighted lever with a pulley, the program asks where the lever stands at each radius. For a thread over a loop it asks the angle of the thread. That says how evenly the weight acts, and what another thread length or pulley place would gain. It is a guide; the next readings decide.',
		],
	},
];
