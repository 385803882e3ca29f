import {type ReactNode, useMemo, useState} from 'react';
import type {Pages} from '../pages/page.js';
import {line} from '../pages/shown-lines.js';
import {FieldScreen} from './field-screen.js';
import {useKeys} from './keys-context.js';
import {MenuScreen} from './menu-screen.js';
import {YesNoScreen} from './yes-no-screen.js';

type PagesScreenProps<P> = {
	readonly pages: Pages<P>;
	/** To where the pages were called from; or to the put-back list of a check. */
	readonly onOut: (reopen?: string) => void;
};

/** Pages beside a check, one at a time: Esc goes back, and what is changed is on the disk before the next one shows. */
export function PagesScreen<P>({pages, onOut}: PagesScreenProps<P>): ReactNode {
	// A new object for each visit, so that a page shows what was changed meanwhile.
	const [visit, setVisit] = useState({place: pages.start, fault: ''});
	const {place, fault} = visit;
	const keys = useKeys();
	const page = useMemo(() => pages.pageOf(visit.place), [pages, visit]);
	const goTo = (next: P): void => setVisit({place: next, fault: ''});
	const enter = async (entry: string): Promise<void> => {
		const turn = pages.turn(place, entry);
		if (turn.kind === 'out') return onOut(turn.reopen);
		if (turn.kind === 'go') return goTo(turn.to);
		if (turn.kind === 'refused') return setVisit({place, fault: turn.sentence});
		// What is typed ahead is meant for the next page.
		keys?.hold();
		const saved = await turn.save().finally(() => keys?.release());
		if (saved.ok) goTo(turn.to);
		else setVisit({place, fault: `NOT SAVED: ${saved.sentence}`});
	};
	const leave = (): void => {
		const before = pages.backOf(place);
		if (before === undefined) onOut();
		else goTo(before);
	};
	const shown = [...(fault === '' ? [] : [line(fault, 'warn')]), ...page.shown];
	const key = JSON.stringify(place);
	const {prompt, title} = page;
	switch (prompt.kind) {
		case 'choice':
			return (
				<MenuScreen
					key={key}
					title={title}
					shown={shown}
					options={prompt.options}
					onChoose={(id) => void enter(id)}
					onBack={leave}
					backHint="Esc back"
				/>
			);
		case 'yes-no':
			return (
				<YesNoScreen
					key={key}
					title={title}
					shown={shown}
					question={prompt.question}
					onAnswer={(answer) => void enter(answer)}
					onBack={leave}
				/>
			);
		case 'field':
			return (
				<FieldScreen
					key={key}
					title={title}
					shown={shown}
					prompt={prompt}
					onEnter={(text) => void enter(text)}
					onBack={leave}
				/>
			);
	}
}
