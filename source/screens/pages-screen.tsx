import {type ReactNode, useMemo, useState} from 'react';
import type {Dialogue} from '../check/dialogue.js';
import type {PagePrompt, Pages, Turn} from '../pages/beside/page.js';
import {line} from '../pages/shown-lines.js';
import {words} from '../words/index.js';
import {says} from '../words/says.js';
import type {Workbench} from '../workbench.js';
import {CheckScreen} from './check-screen.js';
import {FieldScreen} from './field-screen.js';
import {useKeys} from './keys-context.js';
import {MenuScreen, type Misfits} from './menu-screen.js';
import type {PageProps} from './use-page.js';
import {YesNoScreen} from './yes-no-screen.js';

type PagesScreenProps<P> = {
	readonly workbench: Workbench;
	readonly pages: Pages<P>;
	/** A check to begin with, instead of the first page. */
	readonly dialogue?: Dialogue | undefined;
	/** Something to say on the first page. */
	readonly notice?: string | undefined;
	/** To practice, or back from it. @returns why that could not be */
	readonly onElsewhere: (to: 'practice' | 'real-checks') => Promise<string | undefined>;
	readonly onLeave: () => void;
};

/** A page with a fault to tell, or a check. */
type Visit<P> =
	| {readonly kind: 'page'; readonly place: P; readonly fault?: string}
	| {readonly kind: 'check'; readonly dialogue: Dialogue};

/** Pages and the checks that they lead to, one at a time: what is changed is on the disk before the next one shows. */
export function PagesScreen<P>({
	workbench,
	pages,
	dialogue,
	notice,
	onElsewhere,
	onLeave,
}: PagesScreenProps<P>): ReactNode {
	// A new object for each visit, so that a page shows what was changed meanwhile.
	const [visit, setVisit] = useState<Visit<P>>(
		dialogue
			? {kind: 'check', dialogue}
			: {kind: 'page', place: notice === undefined ? pages.start : pages.failed(notice)},
	);
	const keys = useKeys();
	const here = useMemo(
		() => (visit.kind === 'check' ? visit : {...visit, ...pages.at(visit.place), key: JSON.stringify(visit.place)}),
		[pages, visit],
	);
	const goTo = (place: P): void => setVisit({kind: 'page', place});
	if (here.kind === 'check')
		return (
			<CheckScreen
				workbench={workbench}
				initial={here.dialogue}
				onHome={() => goTo(pages.start)}
				onFinished={(record) => goTo(pages.filed(record))}
			/>
		);
	const {place, fault, key, page, turn, back} = here;
	const stay = (because: string): void => setVisit({kind: 'page', place, fault: because});
	/** What is typed ahead is meant for what comes next, not for this page. */
	const held = async <T,>(work: Promise<T>): Promise<T> => {
		keys?.hold();
		return work.finally(() => keys?.release());
	};
	const take = async (next: Turn<P>): Promise<void> => {
		switch (next.kind) {
			case 'go':
				return goTo(next.to);
			case 'refused':
				return stay(next.sentence);
			case 'save': {
				const saved = await held(next.save());
				return saved.ok ? goTo(next.to) : stay(words.faces.notSaved({because: saved.sentence}));
			}
			case 'open': {
				const opened = await held(next.open());
				return opened.ok ? setVisit({kind: 'check', dialogue: opened.dialogue}) : goTo(pages.failed(opened.sentence));
			}
			case 'practice':
			case 'real-checks': {
				const failed = await held(onElsewhere(next.kind));
				return failed === undefined ? undefined : goTo(pages.failed(failed));
			}
			case 'leave':
				return onLeave();
		}
	};
	const shown = fault === undefined ? page.shown : [line(fault, 'warn'), ...page.shown];
	return (
		<PageScreen
			key={key}
			page={{...page, shown}}
			onEntry={(entry) => void take(turn(entry))}
			onBack={() => void take(back)}
			onMisfit={(typed) => stay(says.refusal({id: 'no-reading-here', values: {typed}}))}
		/>
	);
}

/** A page beside a check, drawn by what it asks for. */
const PageScreen = (props: Omit<PageProps<PagePrompt['kind']>, 'prompt'> & Misfits): ReactNode => {
	const {prompt} = props.page;
	switch (prompt.kind) {
		case 'choice':
			return <MenuScreen {...props} prompt={prompt} />;
		case 'yes-no':
			return <YesNoScreen {...props} prompt={prompt} />;
		case 'field':
			return <FieldScreen {...props} prompt={prompt} />;
	}
};
