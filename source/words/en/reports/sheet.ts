import type {RemedyId} from '../../../procedure/remedies.js';
import type {AtWorst, Figures} from '../../../results/figures-types.js';
import type {Who} from '../../../results/finding-row.js';
import {listed, plainNumber} from '../../numbers.js';
import {verdictWord} from '../figures.js';

type At = 'inner' | 'outer' | 'other';

/** What is more than usable: the push to one side, the friction, or both. */
export type Beyond = 'pull' | 'band' | 'both';

const beyond: Readonly<Record<Beyond, string>> = {
	pull: 'The stylus leans on one wall of the groove: it and your records may wear sooner.',
	band: 'The arm sticks: the stylus may lose the groove, and your records may wear sooner.',
	both: 'The arm sticks and leans to one side: stylus and records may wear sooner.',
};

/** What was tried at the bench, in words for somebody who owns the deck and does not set it up. */
const tried: Readonly<Record<RemedyId, string>> = {
	level: 'the deck was levelled',
	leads: 'the thin leads of the arm were laid again',
	bias: 'the bias was taken right off',
	damping: "the arm's damping was looked at",
	force: 'the tracking force was set again',
	height: 'the height was set again',
	again: 'the arm was measured again',
	'gauge-foot': 'the gauge was set firm',
	platter: 'the platter was held still',
	'still-deck': 'the deck was kept still',
	'gauge-zero': 'the gauge was checked',
	'half-force': 'the arm was measured with less force',
	'lead-loop': 'the thin leads of the arm were hung slack',
	'leads-off': 'the thin leads of the arm were taken off for a while',
	magnet: 'steel and magnets were moved away',
	'cartridge-weight': 'the cartridge was taken out for a while',
	lifter: 'the lifter was set free of the arm',
	'gauge-friction': 'the gauge was checked',
	touching: 'whatever touched the arm was freed',
	'along-swing': 'the whole swing was looked along',
	repeat: 'the leads were laid again, and the arm was measured again',
};

/** The customer's sheet: no word of the trade that an owner of a deck does not know, and no ±. */
export const sheet = {
	about: {shop: 'Shop', customer: 'Customer', complaint: 'What you told us'},
	headings: {result: 'How your tonearm is', done: 'What was done', next: 'What comes next', care: 'Take care'},
	/** The verdict in one word, and what is sure where it is not decided. */
	word: ({verdict, atWorst}: Pick<Figures, 'verdict' | 'atWorst'>) => {
		if (verdict !== 'undecided' || atWorst === 'off-scale') return verdictWord[verdict];
		return atWorst === 'beyond' ? `${verdictWord.undecided}: maybe too much` : `${verdictWord[atWorst]}, maybe better`;
	},
	noWord: 'NOT MEASURED TO THE END',
	/** What it means for records and stylus. */
	means: ({atWorst, of, isDecided}: {atWorst: AtWorst; of: Beyond; isDecided: boolean}) => {
		switch (atWorst) {
			case 'good':
				return 'The arm moves freely: it is kind to your records and to the stylus.';
			case 'usable':
				return 'You may play records: the arm is a little less free than it could be.';
			case 'beyond':
				return isDecided ? beyond[of] : `More readings must tell. If it is so: ${beyond[of]}`;
			case 'off-scale':
				return 'The arm pushes more than the gauge can show: play no record before that is found.';
		}
	},
	meansNothing: 'Nothing can be said yet of your records and the stylus.',
	notReady: 'Do not play records yet: the deck is not put back together.',
	picture: {
		title: 'How the arm is pushed',
		caption: ({goodPct, usablePct}: {goodPct: number; usablePct: number}) =>
			`The dot is the push on the arm: good within ${plainNumber(goodPct)} %, usable within ${plainNumber(usablePct)} %. The bar is friction: the shorter, the better.`,
		band: 'friction: shorter is better',
		pull: 'push on the arm',
		/** Names of the bars. */
		at: {inner: 'inside', outer: 'outside', other: 'between'} satisfies Record<At, string>,
	},
	done: {
		measured: ({day}: {day: string}) =>
			`On ${day} the technician measured how the arm is pushed sideways, and how freely it moves.`,
		level: ({passes}: {passes: boolean}) => (passes ? 'The deck stands level.' : 'The deck did not stand level.'),
		tried: ({remedies}: {remedies: readonly RemedyId[]}) => `In between, ${listed(remedies.map((one) => tried[one]))}.`,
		bias: ({setting}: {setting: string}) => `The bias is set against the inward drag of the groove: ${setting}.`,
		force: ({force}: {force: string}) => `The stylus now tracks with ${force}.`,
		ready: 'The deck is put back and ready to play.',
		overridden: 'Some steps did not pass: the next pages say which, and why.',
	},
	next: {
		nothing: 'Nothing has to be done.',
		settle: 'More readings would settle what is still open.',
		finish: 'The check must be finished.',
		by: {
			owner: 'Have the deck levelled, then the arm measured again.',
			technician: 'The technician looks for the cause, then measures again.',
			maker: 'The arm goes to its maker, with the figures of the next pages.',
		} satisfies Record<Who, string>,
		check: ({day}: {day: string}) => `Next check: ${day}.`,
	},
	care: [
		'Turn the volume down before the stylus meets a record.',
		'A stylus breaks at a touch: keep fingers and cloths away from it.',
		"Pull the mains plug before anything is opened. Follow the maker's instructions.",
	],
	/** Over the pages after the sheet. */
	rest: 'For the technician: the check',
};
