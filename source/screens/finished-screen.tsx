import type {ReactNode} from 'react';
import {recordLines} from '../pages/record-lines.js';
import type {FinishedCheck} from '../results/record.js';
import {MenuScreen} from './menu-screen.js';

type FinishedScreenProps = {readonly record: FinishedCheck; readonly onHome: () => void; readonly onLeave: () => void};

/** The check is filed: its result once more, whole. */
export const FinishedScreen = ({record, onHome, onLeave}: FinishedScreenProps): ReactNode => (
	<MenuScreen
		title={
			record.outcome === 'interrupted'
				? 'Filed. The deck is NOT ready to play: its put-back list waits under past checks.'
				: 'Filed. The deck is ready to play; volume down for the first record.'
		}
		shown={recordLines(record)}
		options={[
			{id: 'leave', label: 'leave'},
			{id: 'home', label: 'back to the first screen'},
		]}
		onChoose={(id) => (id === 'home' ? onHome() : onLeave())}
		onBack={onHome}
		backHint="Esc first screen"
	/>
);
