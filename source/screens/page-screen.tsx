import type {ReactNode} from 'react';
import type {BesidePage, PagePrompt} from '../pages/beside/page.js';
import {FieldScreen} from './field-screen.js';
import {MenuScreen} from './menu-screen.js';
import {YesNoScreen} from './yes-no-screen.js';

/** A page, and what it is asked with. */
export type PageProps<Kind extends PagePrompt['kind']> = {
	readonly page: BesidePage;
	readonly prompt: Extract<PagePrompt, {readonly kind: Kind}>;
	/** The id of an option, `yes` or `no`, or what was typed. */
	readonly onEntry: (entry: string) => void;
	readonly onBack: () => void;
};

/** A page beside a check, drawn by what it asks for. */
export const PageScreen = ({page, onEntry, onBack}: Omit<PageProps<PagePrompt['kind']>, 'prompt'>): ReactNode => {
	const {prompt} = page;
	switch (prompt.kind) {
		case 'choice':
			return <MenuScreen page={page} prompt={prompt} onEntry={onEntry} onBack={onBack} />;
		case 'yes-no':
			return <YesNoScreen page={page} prompt={prompt} onEntry={onEntry} onBack={onBack} />;
		case 'field':
			return <FieldScreen page={page} prompt={prompt} onEntry={onEntry} onBack={onBack} />;
	}
};
