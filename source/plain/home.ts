import {closingLines, closingOptions, homeLines, homeOptions} from '../findings/home.js';
import {pastLabel} from '../findings/past.js';
import {profileLines} from '../findings/profile-lines.js';
import {recordLines} from '../findings/record-lines.js';
import {readSetting, settingOptions} from '../findings/settings-menu.js';
import {line, type Shown} from '../findings/shown-lines.js';
import type {Settings} from '../procedure/settings.js';
import type {Option} from '../procedure/step.js';
import type {Opened, Workbench} from '../workbench.js';
import {entryOf, promptLines} from './ask.js';
import {type Lines, textOf} from './converse.js';

export type HomeEnd =
	| {readonly kind: 'opened'; readonly opened: Opened}
	| {readonly kind: 'left' | 'input-ended'}
	| {readonly kind: 'refused' | 'not-saved'; readonly sentence: string};

/** The first questions of the plain face, until a check is opened or the program left. */
export async function home(workbench: Workbench, lines: Lines): Promise<HomeEnd> {
	for (;;) {
		const unfinished = workbench.unfinished();
		const [due] = workbench.archive.due();
		const notices = workbench.notices().map((text) => line(text));
		const chosen = await choose(
			'What next?',
			[...homeLines(unfinished), ...notices],
			homeOptions(unfinished, due),
			lines,
		);
		if (chosen.kind !== 'chosen') return chosen;
		switch (chosen.id) {
			case 'resume':
				return {kind: 'opened', opened: await workbench.resume()};
			case 'start':
			case 'recheck': {
				const open = chosen.id;
				const end = await putAside(workbench, lines, () => workbench[open]());
				if (end) return end;
				break;
			}
			case 'past': {
				const end = await past(workbench, lines);
				if (end) return end;
				break;
			}
			case 'profiles':
				for (const profile of workbench.profiles())
					for (const one of [line(profile.name), ...profileLines(profile)]) lines.say(textOf(one));
				break;
			case 'settings': {
				const end = await settings(workbench, lines);
				if (end) return end;
				break;
			}
			default:
				return {kind: 'left'};
		}
	}
}

type Chosen =
	| {readonly kind: 'chosen'; readonly id: string}
	| {readonly kind: 'left' | 'input-ended'}
	| {readonly kind: 'refused'; readonly sentence: string};

async function choose(
	title: string,
	shown: readonly Shown[],
	options: readonly Option[],
	lines: Lines,
): Promise<Chosen> {
	const prompt = {key: title, kind: 'choice', options} as const;
	lines.say('');
	for (const text of [title, ...shown.map(textOf), ...promptLines(prompt)]) lines.say(text);
	for (;;) {
		const text = await lines.read();
		if (text === undefined) return {kind: 'input-ended'};
		if (text.trim() === '/leave') return {kind: 'left'};
		const entry = entryOf(prompt, text);
		if (typeof entry !== 'string' && entry.kind === 'choose') return {kind: 'chosen', id: entry.id};
		const sentence = typeof entry === 'string' ? entry : 'Answer with a number.';
		if (lines.piped) return {kind: 'refused', sentence: `${title} '${text.trim()}': ${sentence}`};
		lines.say(sentence);
	}
}

/** Opens another check; one that is open is put aside only when asked. Undefined goes back to the first question. */
async function putAside(
	workbench: Workbench,
	lines: Lines,
	openOther: () => Promise<Opened>,
): Promise<HomeEnd | undefined> {
	const unfinished = workbench.unfinished();
	if (!unfinished) return {kind: 'opened', opened: await openOther()};
	const choice = await choose('A check is open.', closingLines(unfinished), closingOptions, lines);
	if (choice.kind !== 'chosen') return choice;
	if (choice.id === 'back') return;
	return {kind: 'opened', opened: await (choice.id === 'resume' ? workbench.resume() : openOther())};
}

/** Past checks a page at a time; undefined goes back to the first question. */
async function past(workbench: Workbench, lines: Lines): Promise<HomeEnd | undefined> {
	const size = 20;
	for (let offset = 0; ; ) {
		const {total, rows, notices} = workbench.archive.past({offset, limit: size});
		const options = [
			...rows.map((row) => ({id: row.id, label: pastLabel(row, 100)})),
			...(offset + size < total ? [{id: 'older', label: 'older'}] : []),
			{id: 'back', label: 'back'},
		];
		const chosen = await choose(
			`Past checks, ${total} in all`,
			notices.map((text) => line(text)),
			options,
			lines,
		);
		if (chosen.kind !== 'chosen') return chosen;
		if (chosen.id === 'back') return;
		if (chosen.id === 'older') offset += size;
		else {
			const end = await one(workbench, chosen.id, lines);
			if (end) return end;
		}
	}
}

async function one(workbench: Workbench, id: string, lines: Lines): Promise<HomeEnd | undefined> {
	const found = workbench.archive.record(id);
	if (!found.ok) {
		lines.say(found.sentence);
		return;
	}
	for (const shown of recordLines(found.record, found.putBackAt)) lines.say(textOf(shown));
	if (found.record.outcome !== 'interrupted' || found.putBackAt !== undefined) return;
	const chosen = await choose(
		'Its deck was never put back.',
		[],
		[
			{id: 'put-back', label: 'do its put-back list now'},
			{id: 'back', label: 'back'},
		],
		lines,
	);
	if (chosen.kind !== 'chosen') return chosen;
	if (chosen.id !== 'put-back') return;
	return putAside(workbench, lines, () => workbench.reopen(id));
}

async function settings(workbench: Workbench, lines: Lines): Promise<HomeEnd | undefined> {
	for (;;) {
		const now = workbench.settings();
		const chosen = await choose('Settings', [], settingOptions(now), lines);
		if (chosen.kind !== 'chosen') return chosen;
		const {id} = chosen;
		if (id === 'back') return;
		if (id === 'bell') {
			const refused = await keep(workbench, {...now, bell: !now.bell}, lines);
			if (refused) return refused;
			continue;
		}
		const option = settingOptions(now).find((item) => item.id === id);
		if (!option || option.id === 'bell' || option.id === 'back') continue;
		lines.say(option.label);
		const text = await lines.read();
		if (text === undefined) return {kind: 'input-ended'};
		if (text.trim() === '/leave') return {kind: 'left'};
		if (text.trim() === '/back') continue;
		const read = readSetting(now, option.id, text);
		const refused = read.ok ? await keep(workbench, read.settings, lines) : refuse(read.sentence, lines);
		if (refused) return refused;
	}
}

async function keep(workbench: Workbench, settings: Settings, lines: Lines): Promise<HomeEnd | undefined> {
	const saved = await workbench.saveSettings(settings);
	return saved.ok ? undefined : refuse(`NOT SAVED: ${saved.sentence}`, lines, 'not-saved');
}

/** Ends a run of piped answers; someone who is there hears the sentence and is asked again. */
function refuse(sentence: string, lines: Lines, kind: 'refused' | 'not-saved' = 'refused'): HomeEnd | undefined {
	if (lines.piped) return {kind, sentence};
	lines.say(sentence);
	return;
}
