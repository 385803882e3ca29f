import type {Excused, Mode} from '../../../check/dialogue.js';

type Detour = Exclude<Mode['kind'], 'ask' | 'side' | 'reason' | 'reason-typed'>;

/** What stands around a question of a check, and the detours from it. */
export const view = {
	arm: ({name = 'new arm', isPractice}: {name: string | undefined; isPractice: boolean}) =>
		isPractice ? `PRACTICE: ${name}` : name,
	stage: ({title, number, of}: {title: string; number: number; of: number}) => `${title} (${number}/${of})`,
	/** With the round, where rounds are taken. */
	titled: ({title, round}: {title: string; round: {number: number; usual: number; isTurned: boolean} | undefined}) =>
		round === undefined || round.usual === 1
			? title
			: `${title}, round ${round.number} of ${Math.max(round.usual, round.number)}`,
	place: ({number, of}: {number: number; of: number}) => `${number}/${of}`,
	minutes: ({minutes, isShort}: {minutes: number; isShort: boolean}) => `${isShort ? '' : 'about '}${minutes} min`,
	complete: {stage: 'Complete', title: 'The check is complete', ask: 'The check is complete.'},
	readyToPlay: 'ready to play',
	notReadyToPlay: 'NOT READY TO PLAY',
	/** Where there is no room for more. */
	notReady: 'NOT READY',
	sheetLineAsked: ({title}: {title: string}) => `${title}: ?`,
	sheetLine: ({title, typed}: {title: string; typed: string | undefined}) =>
		typed === undefined ? `${title}:` : `${title}: ${typed === '' ? '-' : typed}`,
	side: {
		title: ({title}: {title: string}) => `${title}: which side?`,
		ask: ({typed}: {typed: string}) => `You typed ${typed}. On which side?`,
	},
	reason: {
		override: {
			title: 'Why go on?',
			ask: 'Give a reason. It stays beside the verdict for good.',
		},
		strike: {
			title: 'Why is it struck out?',
			ask: 'Give a reason. The round stays on file but no longer counts.',
		},
	} satisfies Record<Excused['kind'], unknown>,
	titles: {
		ways: 'What to do?',
		strike: 'Which round do you strike out?',
		'other-way': 'Another way',
		steps: 'All steps',
		stop: 'Stop here?',
	} satisfies Record<Detour, string>,
	asks: {
		strike: 'The round stays on file but no longer counts.',
		'other-way': 'A change at the bench begins a new series. The rounds so far are kept.',
		steps: 'Type the number of a step. ✓ done, ? look again, ✗ does not pass, ~ overridden.',
		stop: 'If you stop, the put-back list comes next. Tab then leads back to the check. Stop here?',
	} satisfies Record<Exclude<Detour, 'ways'>, string>,
};
