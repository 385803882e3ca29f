import type {BecauseValues, LabelValues, NoticeValues, QuestionValues, RefusalValues} from '../../check/says.js';
import type {StepId} from '../../procedure/step-ids.js';
import type {Sentences} from '../../said.js';
import {found, speaker} from '../speaker.js';
import {entries} from './entries.js';
import {options} from './options.js';
import {ways} from './problems.js';
import {reasons} from './reasons.js';
import {inQuotes, refusals as typedRefusals} from './refusals.js';
import {remedies} from './remedies.js';
import {steps} from './steps/index.js';

const titled = (step: StepId): string => found(steps, step)?.title ?? step;

const again = 'Type it again, or go back (Esc) to the other limit.';

/** Why a series was closed. */
const because: Sentences<BecauseValues> = {
	'as-said': ({sentence}) => sentence,
	'answer-changed': ({step}) => `changed: ${titled(step)}`,
	'other-profile': () => 'another profile',
	'asked-anew': () => 'to be asked anew',
	'left-overnight': () => 'left for twelve hours or more',
	'put-back-between': () => 'the deck was being put back in between',
	'changed-while-left': ({item}) => `changed while the check was left: ${found(entries.inDoubt, item) ?? item}`,
	remedy: ({remedy}) => `remedy: ${found(remedies, remedy)?.name ?? remedy}`,
	'closing-off': () => 'the closing round was off',
	'put-right-by-hand': () => 'the deck was put right by hand',
};

const toldOf = speaker(because);

/** Why an entry was not taken. */
const refusals: Sentences<RefusalValues> = {
	...typedRefusals,
	'as-told': ({sentence}) => sentence,
	'time-passed': () => 'Some time has passed, so your last entry was not taken: first this.',
	'doubts-first': () => 'Some time had passed: first what may have changed, then the readings.',
	'bias-off-first': () => 'The bias is on: switch it off first, then the arm itself can be probed again.',
	'bias-on-first': () => 'First switch the bias on.',
	'was-being-put-back': () => 'The deck was being put back: first what may have changed by that, then a new series.',
	'off-the-scale': ({typed, top}) =>
		`${inQuotes(typed)} cannot be right: the scale of the gauge ends at ${top}. Type the top of the scale if the pointer leans on its stop.`,
	'crossed-turned': ({other}) =>
		`The signs look swapped (${other}): they turn with the gauge. Or does it still stand as used? ${again}`,
	'crossed-pushes': ({other}) =>
		`The outer limit cannot lie inward of the inner one (${other}): the pushes may be swapped. ${again}`,
	'crossed-limits': ({other}) =>
		`The outer limit cannot lie inward of the inner one (${other}): the limits may be swapped, or a sign is wrong. ${again}`,
	'signs-swapped': ({other}) =>
		`The signs look swapped: the outer limit cannot lie inward of the inner one (${other}). ${again}`,
	'press-side': ({plus, minus}) =>
		`Press ${entries.sides[plus].word.charAt(0)} or ${entries.sides[minus].word.charAt(0)}.`,
	'one-round-at-least': () => 'One complete round at least is needed to go on.',
	'outer-limit-lacks': () => 'This round still lacks its outer limit: type it, or take the last reading back.',
	'press-yes-or-no': () => 'Press y for yes or n for not yet.',
	'no-reading-here': ({typed}) => `${inQuotes(typed)} is no line of this list, and a reading is not asked here.`,
	'choose-by-number': () => 'Choose one of the list by its number.',
	'press-still': () => 'Press y if all is still so, or the number of what is not.',
	'few-words': () => 'Type the reason in a few words, at most 80 letters.',
	'no-reading-yet': () => 'There is no reading in this series yet.',
	'comes-first': ({step, first}) =>
		`'${titled(step)}' cannot be asked yet: '${first === undefined ? '' : titled(first)}' comes first.`,
};

/** What happened with an entry and is not to be seen otherwise. */
const notices: Sentences<NoticeValues> = {
	'as-told': ({sentence}) => sentence,
	'does-not-pass-any-more': ({step}) => `With the answer to '${titled(step)}' this does not pass any more:`,
	'round-anew': () => 'The round begins anew: set the gauge again. Its inner limit is kept as withdrawn.',
	'setting-kept': ({number}) =>
		`The readings so far are kept as bias setting ${number}; those that come are of the next one.`,
	'series-kept': ({number, because: why}) =>
		`The rounds so far are kept as series ${number} (${toldOf(why)}); the next ones are a new series.`,
};

/** How far a stage or a step of the list is. */
const marks = {open: ' ', done: '✓', again: '?', problem: '✗', overridden: '~'};

/** What can be chosen. */
const labels: Sentences<LabelValues> = {
	named: ({name}) => name,
	way: ({way}) => ways[way],
	regardless: () => 'go on regardless, with a reason',
	reason: ({reason}) => reasons[reason],
	'other-reason': () => 'another reason (type it)',
	'take-back': () => 'take the last reading back',
	'one-more-round': () => 'one more round',
	strike: () => 'strike a round out',
	'probe-again': () => 'probe again: a new series',
	'less-bias': () => 'set less bias, probe again',
	'without-figures': () => 'go on without figures at this radius',
	'to-verdict': () => 'go on to the verdict',
	enough: () => 'enough: go on',
	'put-back': () => 'enough: put the deck back',
	leave: () => 'leave it as it is: put the deck back',
	'to-maker': () => 'send it to its maker: put the deck back',
	'other-way': () => 'another way',
	'radius-between': () => 'rounds at one more radius between',
	'look-at-bias': () => 'look at the bias device, probe with it on',
	'set-bias': () => 'set the bias device against skating',
	'see-skating': () => 'see what skating asks of this arm',
	'more-rounds': ({place}) =>
		({
			inner: 'more rounds at the inner radius',
			outer: 'more rounds at the outer radius',
			extra: 'more rounds at the third radius',
		})[place],
	'back-to-setting': ({setting}) => `go back to setting ${setting}`,
	'adjust-bias': () => 'adjust the device, probe again',
	'keep-setting': () => 'keep this setting',
	'other-drag': () => 'take another drag',
	'round-or-correction': () => 'one more round, or a correction',
	round: ({place, number, innerLimit, outerLimit = ''}) =>
		`${entries.places[place]}${place === 'extra' ? ' radius' : ''}, round ${number}: ${innerLimit} / ${outerLimit}`,
	'carry-on': () => 'carry on with the check after all',
	stop: () => 'stop here and put the deck back',
	judge: () => 'probe on and judge the arm',
	'fewer-rounds': () => 'go on with the rounds there are',
	option: ({step, option}) => found(found<Readonly<Record<string, string>>>(options, step) ?? {}, option) ?? option,
	side: ({side}) => entries.sides[side].label,
	remedy: ({remedy}) => remedies[remedy].name,
	'in-doubt': ({item}) => entries.inDoubt[item],
	stage: ({stage, state}) => `${marks[state]} ${entries.stages[stage]}`,
	step: ({step, state}) => `${marks[state]} ${titled(step)}`,
	'new-profile': () => 'enter a new one',
};

const questions: Sentences<QuestionValues> = {
	tick: ({list, line}) => found(entries.ticks[list], line) ?? line,
	'all-still-so': () => 'All still so?',
	'all-lines-so': () => 'All of it so?',
};

export const dialogue = {
	because,
	refusals,
	notices,
	labels,
	questions,
	/** Of something on file that this version does not know. */
	unknown: 'something that this version does not know',
};
