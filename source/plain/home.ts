import {closingLines, closingOptions, homeLines, homeOptions} from '../pages/home.js';
import {pastLabels} from '../pages/past.js';
import {pastPages} from '../pages/past-pages.js';
import {profilePages} from '../pages/profile-pages.js';
import {isSwitch, readSetting, settingOptions} from '../pages/settings-menu.js';
import {line} from '../pages/shown-lines.js';
import type {Settings} from '../procedure/settings.js';
import type {Opened, Workbench} from '../workbench.js';
import {choose} from './choose.js';
import type {Lines} from './converse.js';
import {walkPages} from './walk-pages.js';

export type HomeEnd =
	| {readonly kind: 'opened'; readonly opened: Opened}
	| {readonly kind: 'left' | 'input-ended' | 'practice'}
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
			case 'profiles': {
				const end = await walkPages(profilePages(workbench), lines);
				if (end.kind !== 'out') return end;
				break;
			}
			case 'settings': {
				const end = await settings(workbench, lines);
				if (end) return end;
				break;
			}
			case 'practice':
				return {kind: 'practice'};
			default:
				return {kind: 'left'};
		}
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
		const labels = pastLabels(rows, 100);
		const options = [
			...rows.map(({id}, index) => ({id, label: labels[index] ?? id})),
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
	const end = await walkPages(pastPages(workbench, id), lines);
	if (end.kind !== 'out') return end;
	const {reopen} = end;
	return reopen === undefined ? undefined : putAside(workbench, lines, () => workbench.reopen(reopen));
}

async function settings(workbench: Workbench, lines: Lines): Promise<HomeEnd | undefined> {
	for (;;) {
		const now = workbench.settings();
		const chosen = await choose('Settings', [], settingOptions(now), lines);
		if (chosen.kind !== 'chosen') return chosen;
		const {id} = chosen;
		if (id === 'back') return;
		if (isSwitch(id)) {
			const refused = await keep(workbench, {...now, [id]: !now[id]}, lines);
			if (refused) return refused;
			continue;
		}
		const option = settingOptions(now).find((item) => item.id === id);
		if (!option || option.id === 'back' || isSwitch(option.id)) continue;
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
