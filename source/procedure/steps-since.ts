import {type Step, step} from './step.js';

/** The answer that is no event. */
export const nothingDone = 'nothing';

/** What may have been done to an arm since its last check. Any but the first begins a new stretch of its history. */
export const eventOptions = [
	{id: nothingDone, label: 'nothing that I know of'},
	{id: 'levelled', label: 'the deck was levelled'},
	{id: 'leads', label: 'the leads were dressed'},
	{id: 'bearing', label: 'a bearing was serviced'},
	{id: 'cartridge', label: 'the cartridge was changed'},
	{id: 'moved', label: 'the deck moved to another place'},
	{id: 'other', label: 'something else'},
] as const;

/** Asked first where a check is repeated: what was done since. */
export const sinceSteps: readonly Step[] = [
	step('done-since', {
		stage: 'resume',
		title: 'Since the last check',
		ask: 'What was done to arm or deck since the last check?',
		why: 'A change that has a cause is no drift: comparisons and the trend begin anew from here.',
		mistake: 'Leaving out a new cartridge, or a deck that was carried to another room.',
		input: {kind: 'choice', options: eventOptions},
		when: (facts) => facts.isRecheck,
	}),
	step('done-since-note', {
		stage: 'resume',
		title: 'What was done',
		ask: 'What was done? A few words.',
		why: 'It stands in the history of the arm.',
		mistake: 'Writing when instead of what.',
		input: {kind: 'text'},
		when: (facts) => facts.is('done-since', 'other'),
	}),
];

/** An event in words; undefined for an id that is none. */
export const eventLabel = (id: string): string | undefined =>
	eventOptions.find((one) => one.id === id && one.id !== nothingDone)?.label;
