import type {BecauseValues, LabelValues, NoticeValues, QuestionValues, RefusalValues} from '../../check/says.js';
import type {StepId} from '../../procedure/step-ids.js';
import type {Sentences} from '../../said.js';
import {found, speaker} from '../speaker.js';
import {signedTyped} from '../typed.js';
import {entries} from './entries.js';
import {options} from './options.js';
import {ways} from './problems.js';
import {reasons} from './reasons.js';
import {inQuotes, refusals as typedRefusals} from './refusals.js';
import {remedies} from './remedies.js';
import {steps} from './steps/index.js';

const titled = (step: StepId): string => found(steps, step)?.title ?? step;

const again = 'Type the reading again. Esc goes back to the other limit.';

/** Why a series was closed. */
const because: Sentences<BecauseValues> = {
	'as-said': ({sentence}) => sentence,
	'answer-changed': ({step}) => `'${titled(step)}' changed`,
	'other-profile': () => 'another profile',
	'asked-anew': () => 'asked again',
	'left-overnight': () => 'the check was left for twelve hours or more',
	'put-back-between': () => 'put-back had begun',
	'changed-while-left': ({item}) => `'${found(entries.inDoubt, item) ?? item}' changed while the check was left`,
	remedy: ({remedy}) => `you chose '${found(remedies, remedy)?.name ?? remedy}'`,
	'closing-off': () => 'the closing round was off',
	'put-right-by-hand': () => 'put right by hand',
};

const toldOf = speaker(because);

/** Why an entry was not taken. */
const refusals: Sentences<RefusalValues> = {
	...typedRefusals,
	'as-told': ({sentence}) => sentence,
	'time-passed': () => 'Your last entry came too late. Answer this first.',
	'doubts-first': () => 'Some time has gone by. First say what changed, then go on.',
	'bias-off-first': () => 'The bias is on. Take it off first.',
	'bias-on-first': () => 'Put the bias on first.',
	'was-being-put-back': () => 'Put-back had begun. First say what changed; then a new series begins.',
	'off-the-scale': ({typed, top}) =>
		`${inQuotes(typed)} cannot be right: the gauge's scale ends at ${top}. Type ${top} if the pointer leans on its stop.`,
	'crossed-turned': ({other}) =>
		`The sign does not fit the other limit, ${signedTyped(other)}. Make sure that the gauge is turned. ${again}`,
	'crossed-pushes': ({other}) =>
		`The outer limit must lie farther out than the inner one (${signedTyped(other)}). Are the pushes swapped? ${again}`,
	'crossed-limits': ({other}) =>
		`The outer limit must lie farther out than the inner one (${signedTyped(other)}). Is a sign wrong, or are both limits swapped? ${again}`,
	'signs-swapped': ({other}) =>
		`The signs look swapped: the outer limit must lie farther out than the inner one (${signedTyped(other)}). ${again}`,
	'press-side': ({plus, minus}) =>
		`Press ${entries.written.sides[plus].charAt(0)} or ${entries.written.sides[minus].charAt(0)}.`,
	'one-round-at-least': () => 'Take at least one whole round first.',
	'outer-limit-lacks': () => 'The outer limit of this round is missing. Type it, or take the last reading back.',
	'press-yes-or-no': () => 'Press y for yes, n for not yet.',
	'no-reading-here': ({typed}) => `There is no line ${inQuotes(typed)} here. Type the number of a line.`,
	'choose-by-number': () => 'Choose one of the list by its number.',
	'press-still': () => 'Press y if all is still true, or the number of what changed.',
	'few-words': () => 'Type the reason in a few words, at most 80 letters.',
	'no-reading-yet': () => 'This series has no reading yet.',
	'comes-first': ({step, first}) =>
		`'${titled(step)}' must wait: '${first === undefined ? '' : titled(first)}' comes first.`,
};

/** What happened with an entry and is not to be seen otherwise. */
const notices: Sentences<NoticeValues> = {
	'as-told': ({sentence}) => sentence,
	'does-not-pass-any-more': ({step}) => `After '${titled(step)}' this no longer passes:`,
	'round-anew': () => 'This round begins again: set the gauge again. Its first inner limit does not count.',
	'setting-kept': ({number}) => `Setting ${number} is kept with its readings. A new setting begins.`,
	'series-kept': ({number, because: why}) => `Series ${number} is kept and a new series begins: ${toldOf(why)}.`,
};

/** How far a stage or a step of the list is. */
const marks = {open: ' ', done: '✓', again: '?', problem: '✗', overridden: '~'};

/** What can be chosen. */
const labels: Sentences<LabelValues> = {
	named: ({name}) => name,
	way: ({way}) => ways[way],
	regardless: () => 'go on all the same, with a reason',
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
	leave: () => 'leave the arm as it is: put the deck back',
	'to-maker': () => 'send the arm to its maker: put the deck back',
	'other-way': () => 'another way',
	'radius-between': () => 'rounds at one more radius, between the two',
	'look-at-bias': () => 'set the bias device, probe with bias on',
	'set-bias': () => 'set the bias against skating',
	'see-skating': () => 'see what skating asks of this arm',
	'more-rounds': ({place}) =>
		({
			inner: 'more rounds at the inner radius',
			outer: 'more rounds at the outer radius',
			extra: 'more rounds at the third radius',
		})[place],
	'back-to-setting': ({setting}) => `go back to setting ${setting}`,
	'adjust-bias': () => 'set the bias again, probe again',
	'keep-setting': () => 'keep this setting',
	'other-drag': () => 'assume another drag',
	'round-or-correction': () => 'one more round, or a correction',
	round: ({place, number, innerLimit, outerLimit = ''}) =>
		`${entries.places[place]}${place === 'extra' ? ' radius' : ''}, round ${number}: ${signedTyped(innerLimit)} / ${signedTyped(outerLimit)}`,
	'carry-on': () => 'go on with the check after all',
	stop: () => 'stop here and put the deck back',
	judge: () => 'take the rest of the rounds, for a verdict',
	'fewer-rounds': () => 'go on with these rounds',
	option: ({step, option}) => found(found<Readonly<Record<string, string>>>(options, step) ?? {}, option) ?? option,
	side: ({side}) => entries.sides[side],
	remedy: ({remedy}) => remedies[remedy].name,
	'in-doubt': ({item}) => entries.inDoubt[item],
	stage: ({stage, state}) => `${marks[state]} ${entries.stages[stage]}`,
	step: ({step, state}) => `${marks[state]} ${titled(step)}`,
	'new-profile': () => 'enter a new one',
};

const questions: Sentences<QuestionValues> = {
	tick: ({list, line}) => found(entries.ticks[list], line) ?? line,
	'all-still-so': () => 'All still true?',
	'all-lines-so': () => 'All done?',
};

export const dialogue = {
	because,
	refusals,
	notices,
	labels,
	questions,
	/** Of something on file that this version does not know. */
	unknown: 'something this version does not know',
};
