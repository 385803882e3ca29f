import {cautions} from '../../reports/method.js';
import type {Topic} from '../topics.js';

/** What hands do and type at the bench. */
export const atTheBench: readonly Topic[] = [
	{
		name: 'bench',
		title: 'what to prepare, and what to be careful of',
		blocks: [
			'You need a gauge that reads the sideways force of the arm (in percent of the tracking force, millinewtons or grams), a stylus scale, a level, and a ruler or feeler blocks. Let the arm stand in the room for an hour. A first check takes about half an hour.',
			'Arm and tools are kept as profiles, so later checks are quicker. What decides nothing at the bench is not asked: the radii, the serial number, how surely gauge, scale and level read. The program takes usual values; a profile may say otherwise.',
			...cautions,
			'Stop the platter and keep it from creeping. Weigh with the guard on, since its mass counts; do not zero the scale on it.',
			'The usual ways to spoil a check:',
			{
				rows: [
					['bias still acting', 'unhook it; zero on a dial is not always zero force'],
					['damping left in', 'empty the trough, or lift the paddle clear'],
					['a lead that touches', 'leads in their usual dress, nothing against the arm, lifter down'],
					['draught', 'lid, fan and heating off'],
					['guard left out', 'of the weighing: the readings are then percent of the wrong force'],
				],
			},
			'Leave at any moment with Ctrl+C: what a screen showed as confirmed is on the disk.',
		],
	},
	{
		name: 'readings',
		title: 'how readings are typed, and what their sign means',
		blocks: [
			'Type a reading as you would write it, then press Enter. A decimal comma is as good as a point; a unit may follow.',
			{
				rows: [
					['2  2.5  2,5', 'bare: one key then says on which side of zero the pointer stands'],
					['+2.5  -1.5', 'with the sign of your gauge'],
					['2.5 out  1.5 in', 'the arm pushes toward the rim, toward the spindle'],
					['2.1 g  21 mN  3 mm  0.7 in', 'in another unit than the one that is asked for'],
				],
			},
			'If you type neither word nor sign, one key says which side, and takes the answer. Nothing is guessed.',
			'A reading is the force that the arm exerts on the gauge, positive toward the rim. Your gauge may have its plus the other way, or show the force of your hand that starts the arm. Say so once when you describe it. Its readings are then turned at entry: negated, and for the force of a hand the two limits are swapped.',
			'The inner and the outer limit are called after the place of the arm, not after the sign: an inner limit that reads out is quite normal. Nudge the arm in small steps; the last place where it still holds is the limit. Both limits make a round; three rounds at each radius are usual. Before each round lift the arm and set the gauge again.',
			'Take the second round with the gauge turned end for end, and type it in the sign of the gauge: so the zero of the gauge shows. If the gauge cannot be turned, read it free of the arm, before the first round and after the last.',
		],
	},
	{
		name: 'keys',
		title: 'the keys, the number pad alone, plain lines',
		blocks: [
			'Every screen has the same places: a bar (arm, where you are, minutes left), the deck as your hands left it, one thing to do, one picture, the answer, the keys.',
			{
				rows: [
					['Enter', 'takes what is typed, or the marked line of a list; twice in haste counts once'],
					['1 … 9', 'marks a line of a list, for Enter to take'],
					['y, n', 'answers a question; Enter alone never does'],
					[
						'o i, r l, b f, + -',
						'out in, right left, back front, the sign of the gauge: the side of what was typed, at once',
					],
					['Enter, Space', 'starts the settle countdown while the field of a reading is empty'],
					['→, PgDn', 'turn to the next page, as to the numbers behind a verdict'],
					['Esc', 'goes back to the last screen that was answered, also from a half-typed answer'],
					['Tab', 'shows all steps with their state; stops the check, takes a reading back, strikes a round out'],
					['? or F1', 'says why a step is there and what usually goes wrong; ? only while nothing is typed'],
					['Ctrl+U', 'empties the field'],
					['Ctrl+C', 'leaves; what was confirmed is on the disk, and the next start offers to go on'],
				],
			},
			'In the list of steps the number that stands in the bar leads to its stage, and 0 to the put-back list. A round that was begun begins again after you left the check or visited another step.',
			'A step that does not pass says what to do. You can go on all the same, but only with a reason; it stands beside the verdict for good.',
			'The number pad alone does for a whole probe: type the size with + or - before or behind it, then Enter. While nothing is typed / goes back as Esc does, and * says why as ? does. A letter for the side may follow its number too: 2.5o, 0.15r.',
			'With --plain an answer is a line with its Enter: the number of a line of a list, or what you would type into the field. /, /back, * and /why are lines too. Answers may come from a file:',
			{lines: ['armdrift --plain', 'armdrift --plain < answers.txt']},
			'In plain lines a list, such as that of what is to be made safe, is one question and one line of a file. Answer y where all of it is so, else the numbers of what is not (2 4): those are asked again. What was said and still stands is not said again; /again says the question with all that belongs to it.',
		],
	},
];
