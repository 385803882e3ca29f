import type {ReactNode} from 'react';
import type {PagePrompt} from '../pages/beside/page.js';
import {FieldScreen} from './field-screen.js';
import {MenuScreen} from './menu-screen.js';
import type {PageProps} from './use-page.js';
import {YesNoScreen} from './yes-no-screen.js';

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
