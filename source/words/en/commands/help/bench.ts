import {cautions} from '../../reports/method.js';
import type {Topic} from '../topics.js';

/** What hands do and type at the bench. */
export const atTheBench: readonly Topic[] = [
	{
		name: 'bench',
		title: 'what to prepare, and what to be careful of',
		blocks: [
			'You need a gauge that reads how hard the arm pushes sideways. It may show percent of the tracking force, millinewtons or grams. You also need a stylus scale, a level, and a ruler or feeler blocks. Let the arm stand in the room for an hour. A first check takes about half an hour.',
			'Arm and tools are kept as profiles, so later checks are quicker. The program does not ask what decides nothing at the bench: the radii, the serial number, the ± of your tools. It takes usual values; type others into the profile.',
			...cautions,
			'Stop the platter and keep it from creeping. Weigh with the guard on, because its mass counts. Do not zero the scale on it.',
			'The usual ways to spoil a check:',
			{
				rows: [
					['bias still acting', 'unhook it: zero on a dial is not always zero force'],
					['damping left in', 'empty the trough, or lift the paddle clear'],
					['a lead that touches', 'lay the leads as always, keep the arm clear, put the lifter down'],
					['draught', 'take the lid off, switch fan and heating off'],
					['guard left out', 'weigh with it on, else the readings are percent of the wrong force'],
				],
			},
			'Leave at any moment with Ctrl+C. What a screen showed as confirmed is on the disk.',
		],
	},
	{
		name: 'readings',
		title: 'how readings are typed, and what their sign means',
		blocks: [
			'Type a reading as you would write it, then press Enter. A decimal comma is as good as a point; a unit may follow.',
			{
				rows: [
					['2  2.5  2,5', 'the number alone: one key then says on which side of zero it lies'],
					['+2.5  -1.5', 'with the sign of your gauge'],
					['2.5 out  1.5 in', 'the arm pushes toward the rim, toward the spindle'],
					['2.1 g  21 mN  3 mm  0.7 in', 'in another unit than the one asked for'],
				],
			},
			'If you type neither word nor sign, press one key for the side: it takes the answer too. Nothing is guessed.',
			'A reading is the force of the arm on the gauge, positive toward the rim. Your gauge may have its plus the other way, or show the force of your hand that starts the arm. Say so once, when you describe it. The program then turns the sign as you type; for the force of a hand it also swaps the limits.',
			'The inner and the outer limit are named after the place of the arm, not the sign. An inner limit may well be out. Nudge the arm in small steps. The last reading that held is the limit. Both limits make a round; three rounds at each radius are usual. Before each round lift the arm and set the gauge again.',
			'Take the second round with the gauge turned end for end, and type the sign that it shows. That tells the zero of the gauge. If the gauge cannot be turned, read it free of the arm, before the first round and after the last.',
		],
	},
	{
		name: 'keys',
		title: 'the keys, the number pad alone, plain lines',
		blocks: [
			'Every screen has the same places. At the top stand the arm, where you are and the minutes left. Under it stands the deck as your hands left it. Then come one thing to do, one picture, the answer and the keys.',
			{
				rows: [
					['Enter', 'takes what is typed, or the marked line of a list; pressed twice at once, it counts once'],
					['1 … 9', 'marks a line of a list, for Enter to take'],
					['y, n', 'answers a question; Enter alone never does'],
					[
						'o i, r l, b f, + -',
						'out in, right left, back front, the sign of the gauge: gives what you typed its side, at once',
					],
					['Enter, Space', 'starts the settle countdown while the field of a reading is empty'],
					['→, PgDn', 'turn to the next page, such as the numbers behind a verdict'],
					['Esc', 'goes back to the last answered screen, from a half-typed answer too'],
					['Tab', 'shows all steps; there you stop the check, take a reading back or strike a round out'],
					['? or F1', 'says why a step is there and what usually goes wrong; type ? while the field is empty'],
					['Ctrl+U', 'empties the field'],
					['Ctrl+C', 'leaves; what was confirmed is on the disk, and the next start offers to go on'],
				],
			},
			'In the list of steps, type the number of a stage to go there, or 0 for the put-back list. If you leave a round half done, or visit another step, that round begins again.',
			'A step that does not pass says what to do. You can go on all the same, but only with a reason. The reason stands beside the verdict for good.',
			'The number pad alone is enough for a whole probe. Type the number with + or - before or behind it, then Enter. While the field is empty, / goes back as Esc does, and * says why as ? does. A letter for the side may follow the number: 2.5o, 0.15r.',
			'With --plain, type the number of a line of a list, or what the field would take, then Enter. /, /back, * and /why are answers too. Answers may come from a file:',
			{lines: ['armdrift --plain', 'armdrift --plain < answers.txt']},
			'In plain lines a list to tick is one question, and one line of a file. Answer y where all of it is so, else the numbers of what is not (2 4). Those are asked again. What was said and is still true is not said again; /again says all of it.',
		],
	},
];
