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
						`the distance between the limits, the hold band of the trade. Good to ${pct(limits.bandGoodPct)}, usable to ${pct(limits.bandUsablePct)}`,
					],
					['breakaway', 'half the friction: the force that just moves the arm either way'],
					[
						"tilt's share",
						`what the tilt of the deck makes of the pull. It is shown beside the pull and never taken off: the cure is to level the deck. Good to a quarter of the good pull (${pct({value: limits.pullGoodPct.value / 4})})`,
					],
				],
			},
			'These limits are defaults of this program, from memory of trade practice; no published limits were found. You can change them in the settings. A verdict is given only where the figure and its whole ± lie on one side of a limit:',
			{
				rows: [
					['good, usable', 'leave it'],
					['beyond', 'the causes are named, with what to do next and who does it'],
					[
						'undecided',
						'the ± reaches over a limit. First comes what is sure (usable, maybe good), then what would decide it: so many rounds more, a finer reading step, or nothing, because the figure lies on the limit',
					],
				],
			},
			'Five different things have five words:',
			{
				rows: [
					['not measured', 'no reading was taken'],
					['off scale', 'the reading reached the end of the scale and gives no figure'],
					['undecided', 'the ± reaches over a limit'],
					['interrupted', 'the check did not come to its end, and the deck was not put back'],
					['overridden', 'a step was passed all the same; its reason stands beside the verdict for good'],
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
			'Start it from the verdict: of a sound arm at once, else under "another way". It goes on with the bias device switched on. Where the friction is beyond limits, cure that first: bias cannot be set finer than half of it.',
			'The groove drags at the stylus. The line from stylus to pivot is no tangent of the groove, so that makes a torque toward the spindle. Bias must cancel it: drag × φ, where φ is the sine of the angle between groove tangent and that line. It follows from effective length and pivot distance alone. So for each radius there is a wanted reading: 100 × drag × φ percent, toward the rim. Own pull and bias together must make it.',
			'Figures and curve are percent of the playing force. What you are to set is printed as your gauge will show it, to its step: percent of the force that it carries (guard included), its own zero added.',
			{
				rows: [
					[
						'drag',
						'groove drag over tracking force. Assumed: 0.30; you can set it from 0.15 to 0.60. No published figure could be read, so the picture shows ± 0.05 beside it. To set finer than that is false precision',
					],
					['own pull', 'read in the probe, with the bias off'],
					['bias alone', 'reading with the bias on, less the own pull at that radius'],
					['left over', 'reading less wanted reading: above zero is too much bias, below zero too little'],
					[
						'best setting',
						'the factor on the present bias that makes what is left over at worst between 60 and 146 mm smallest. First comes the reading to set the gauge to at each radius, because that is what a hand can set',
					],
					['friction hides', 'half the largest friction: no setting can be read finer, so below it you stop'],
					[
						'inner, outer wall',
						'how the load divides between the groove walls while a record plays. The wall gives the torque that is left over, divided by the cosine of that angle, a little more than the torque itself',
					],
				],
			},
			'Each setting keeps its readings, the best one is marked, and you can go back to it.',
			'For a weighted lever with a pulley, or a thread over a loop, the program asks the place of the lever, or the angle of the thread, at each radius. That says how evenly the weight acts, and what another thread length or pulley place would gain. It is a guide; the next readings decide.',
		],
	},
];
