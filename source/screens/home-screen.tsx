import {type ReactNode, useState} from 'react';
import {homeLines, homeOptions} from '../pages/home.js';
import {line} from '../pages/shown-lines.js';
import type {Workbench} from '../workbench.js';
import {MenuScreen} from './menu-screen.js';

export type HomeChoice = 'resume' | 'recheck' | 'start' | 'profiles' | 'past' | 'settings' | 'practice' | 'leave';

type HomeScreenProps = {
	readonly workbench: Workbench;
	readonly notice: string;
	readonly onChoose: (choice: HomeChoice) => void;
};

const choices: readonly HomeChoice[] = [
	'resume',
	'recheck',
	'start',
	'profiles',
	'past',
	'settings',
	'practice',
	'leave',
];

/** The first screen: an unfinished check before anything else. */
export const HomeScreen = ({workbench, notice, onChoose}: HomeScreenProps): ReactNode => {
	const [unfinished] = useState(() => workbench.unfinished());
	const [due] = useState(() => workbench.archive.due()[0]);
	const [notices] = useState(() => workbench.notices());
	return (
		<MenuScreen
			title={`armdrift ${workbench.version}: does the arm swing freely?`}
			shown={[
				...homeLines(unfinished),
				...[...notices, ...(notice === '' ? [] : [notice])].map((text) => line(text, 'warn')),
			]}
			options={homeOptions(unfinished, due)}
			onChoose={(id) => {
				const choice = choices.find((one) => one === id);
				if (choice) onChoose(choice);
			}}
			onBack={() => onChoose('leave')}
			backHint="Esc leave"
		/>
	);
};
