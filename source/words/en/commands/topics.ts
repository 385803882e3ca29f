import limits from '../../../../shared/limits.json' with {type: 'json'};
import {glossary} from '../glossary.js';
import {exitStatusRows} from './command-line.js';
import {scripts} from './scripts.js';

/** A paragraph; or rows of a term and what it means; or lines to be typed as they stand. */
export type HelpBlock =
	| string
	| {readonly rows: readonly (readonly [term: string, meaning: string])[]}
	| {readonly lines: readonly string[]};

export type Topic = {readonly name: string; readonly title: string; readonly blocks: readonly HelpBlock[]};

/** A number and its sign stay on one line. */
const pct = (limit: {readonly value: number}): string => `${limit.value}\u00A0%`;

/** What is explained by `help TOPIC` and in the manual page. */
export const topics: readonly Topic[] = [
	{
		name: 'bench',
		title: 'what to prepare, and what to be careful of',
		blocks: [
			'You need a gauge that reads the sideways force of the arm (in percent of the tracking force, in millinewtons or in grams), a stylus scale, a level, and a ruler or feeler blocks. The arm should have stood in the room for an hour. A first check takes about half an hour.',
			'Mute or switch off the amplifier before the stylus is touched, stop the platter and keep it from creeping. Unplug the mains before anything is opened. Wiring, earthing and repair are for licensed or authorised people under your local codes, and the warranty may forbid touching a bearing.',
			'A stylus is sharp and its cantilever breaks at a touch: the guard stays on until the very last step. Its mass counts, so weigh with the guard on and do not zero the scale on it. Never press down on the guard of a unipivot arm.',
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
			'Leave at any moment with Ctrl+C: what a screen showed as confirmed is on the disk. Until the putting back is done the deck is not ready to play, and every screen says so.',
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
					['2.1 g  21 mN  3 mm', 'in another unit than the one that is asked for'],
				],
			},
			'A reading is the force that the arm exerts on the gauge, positive toward the rim. A gauge that has its plus the other way, or that shows the force of a hand that starts the arm, is described once with the tools: its readings are turned at entry, and for the force of a hand the two limits are swapped.',
			'The inner and the outer hold limit are called after the place of the arm, not after the sign: an inner limit that reads out is quite normal. Nudge the arm in small steps; the last place where it still holds is the limit. Inner limit and outer limit make one round; three rounds at each radius are usual. Before each round the arm is lifted and the gauge is set anew. The second round is taken with the gauge turned end for end and typed in the sign of the gauge: it tells the zero of the gauge from the pull of the arm. A gauge that cannot be turned is read free of the arm, before the first round and after the last.',
		],
	},
	{
		name: 'keys',
		title: 'the keys, and how to do with the number pad alone',
		blocks: [
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
					['Esc', 'goes back to the last screen that was answered'],
					['Tab', 'shows all steps; stops the check, takes a reading back, strikes a round out'],
					['? or F1', 'says why a step is there; ? only while nothing is typed'],
					['Ctrl+U', 'empties the field'],
					['Ctrl+C', 'leaves; what was confirmed is on the disk'],
				],
			},
			'The number pad alone does for a whole probe: type the size with + or - before or behind it, then Enter. While nothing is typed / goes back as Esc does, and * says why as ? does. A letter for the side may follow its number too: 2.5o, 0.15r.',
			'With --plain an answer is a line with its Enter: the number of a line of a list, or what you would type into the field. /, /back, * and /why are lines too.',
		],
	},
	{
		name: 'figures',
		title: 'how to read the figures and the verdict',
		blocks: [
			'All figures are percent of the playing tracking force, and every ± is for 95 %.',
			{
				rows: [
					[
						'side pull',
						`the middle of the hold band: what wiring, bearings and level do; out is toward the rim. Good to ${pct(limits.pullGoodPct)}, usable to ${pct(limits.pullUsablePct)}`,
					],
					[
						'hold band',
						`the span between the hold limits, the static friction. Good to ${pct(limits.bandGoodPct)}, usable to ${pct(limits.bandUsablePct)}`,
					],
					['breakaway', 'half the hold band: the force that just moves the arm either way'],
					[
						"tilt's share",
						'what the tilt of the deck makes of the pull; shown beside it and never taken off, because the cure is to level the deck',
					],
				],
			},
			'These limits are defaults of this program, from memory of trade practice; no published limits were found. They can be changed in the settings. A verdict is given only where the figure and its whole ± lie on one side of a limit:',
			{
				rows: [
					['good, usable', 'leave it'],
					['beyond', 'the causes are named, with what to do next and who does it'],
					['undecided', 'the ± reaches over a limit: what is sure comes first, then what would decide it'],
					['off scale', 'the reading reached the top of the scale and gives no figure'],
					['interrupted', 'the check did not come to its end, and the deck was not put back'],
				],
			},
			'A step that was passed regardless is named beside the verdict with its reason, for good.',
		],
	},
	{
		name: 'bias',
		title: 'setting the bias (anti-skating) device by readings',
		blocks: [
			'The groove drags at the stylus, and because the line from stylus to pivot is no tangent of the groove, that makes a torque toward the spindle. Bias must cancel it together with what the arm does by itself. So there is a wanted reading at every radius, toward the rim: 100 × drag × φ percent, where φ follows from effective length and pivot distance.',
			'No published drag was found: it is assumed, shown as such, and can be changed. A leftover smaller than what ± 0.05 of drag makes is false precision.',
			{
				rows: [
					['own pull', 'read in the probe, with the bias off'],
					['left over', 'reading less wanted reading: above zero is too much bias, below zero too little'],
					['friction floor', 'half the widest hold band: no setting can be read finer, so below it you stop'],
					['best setting', 'what to set the gauge to at each radius, so that the worst leftover is smallest'],
				],
			},
			'Start it from the verdict. Each setting keeps its readings, the best one is marked, and you can go back to it.',
		],
	},
	{
		name: 'years',
		title: 'the next check, comparing with earlier ones, reports, moving data',
		blocks: [
			'A check is worth most when it can be compared. "armdrift due" lists the arms by the day of their next check: six months on (common practice, no source), three where a wire is stiff or in a free loop, one where something changed, may be decided by more rounds, or was to be put right. It ends with 10 when an arm is due, else with 0:',
			{lines: ['armdrift due --quiet; [ $? -eq 10 ] && echo "an arm is due"', 'armdrift due --calendar checks.ics']},
			'The calendar has one event for each arm and a reminder a week before. Take the file in again after the next check: the event moves, it does not double. An overdue check stands on the day after the writing; an arm that was set aside loses its event.',
			'"armdrift recheck" repeats the last check of an arm. What cannot have changed unseen is filled in, and last time\'s hold band stands beside this time\'s. It ends in changed, perhaps or not changed, at each radius: changed is what the ± of both checks cannot explain, with 99 % confidence, and more than half a percent. It begins with what was done since: that begins a new stretch of its history. What was done on any other day can be noted with the profile of the arm. From five checks of a stretch on there is a trend, with what is known of the temperature.',
			'"armdrift list" shows past checks with their ids, the newest first; with --as json it is made for scripts. "armdrift report" writes a check or the history of an arm for reading, for an e-mail or for the maker of the arm. "armdrift export" and "armdrift import" bring checks from one machine to another, and an arm that was renamed on either is one arm with all its names afterwards. In the table of an export done_since, done_on and done_note say what was done between a check and the one before: the kinds (levelled, leads, bearing, cartridge, moved, other), their days and the words typed. Nothing that was filed is changed later: a check that should not count is marked void, with the reason. Only "armdrift delete" takes an arm away with all its checks, after its name was typed and a back-up was written.',
		],
	},
	{
		name: 'data',
		title: 'where the data lies, what the environment changes, exit statuses',
		blocks: [
			'Every answer is on the disk before the next question. Each finished check is a file of its own in the folder of the data, with the result as it was issued that day. The folder is the one given with --data, else the one that ARMDRIFT_DATA names, else one called armdrift, in the usual place for settings of programs.',
			{
				rows: [
					['ARMDRIFT_DATA', 'folder of the data'],
					['NO_COLOR, FORCE_COLOR', 'without colours, with colours'],
					['ACCESSIBLE=1, TERM=dumb', 'plain numbered questions instead of full screens, as with --plain'],
					['INK_SCREEN_READER=1', 'screens in an order that can be read aloud'],
				],
			},
			'How the program ends; a verdict never changes it:',
			{rows: exitStatusRows},
			'To complete commands, options, arms and ids of checks at the Tab key, put the line of your shell into its start-up file:',
			{
				lines: [
					'eval "$(armdrift completion bash)"',
					'source <(armdrift completion zsh)',
					'armdrift completion fish | source',
				],
			},
		],
	},
	scripts,
	{
		name: 'practising',
		title: 'how to practise on an invented arm',
		blocks: [
			'"armdrift practice" leads through the same check on an arm that lives in the program. Nothing can break, and at the end its truth stands beside what was found, with what to do better. Practice data lie in a folder of their own, are never mixed with real checks, and every screen and report of them says PRACTICE.',
			'"A first try" asks one round at each radius and "the whole probe" three, on a deck that somebody else has prepared; whether rightly, the readings will tell. "The whole check" begins at the first line: the screen says what there is to see on the bench.',
			{
				rows: [
					['Left, Right', 'nudge the arm inward and outward by about 1 % of tracking force, to come near a limit'],
					[', .', 'the same in fine steps of about half a percent, to find it'],
					['!', 'do by hand what the question offers; at the verdict, show the truth of the arm'],
					['< > , .', 'the same nudges with --plain: a line of them is so many nudges, each until the arm is still'],
				],
			},
			'Nudge, wait until the arm is still, look. Where it comes back by itself the place before was the limit (where every nudge comes back, nudge the other way first): go there once more in fine steps, wait for five seconds, and type what the gauge showed, with its sign.',
			'The same --seed gives the same arm the same draught and trembling, as long as the same is done to it.',
		],
	},
	{
		name: 'words',
		title: 'what the words of the program mean',
		blocks: [{rows: glossary.map(({term, meaning}) => [term, meaning] as const)}],
	},
];
