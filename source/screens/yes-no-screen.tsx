import type {ReactNode} from 'react';
import type {Shown} from '../pages/shown-lines.js';
import {KEYS} from '../terminal/keys.js';
import {useTerminalSize} from '../terminal/use-terminal-size.js';
import {rowsOf, textRows} from './body.js';
import {Frame} from './frame.js';
import {Keyed} from './inputs/keyed.js';
import {useCommands} from './keys-context.js';
import {useLook} from './look.js';

type YesNoScreenProps = {
	readonly title: string;
	readonly shown: readonly Shown[];
	readonly question: string;
	readonly onAnswer: (answer: 'yes' | 'no') => void;
	readonly onBack: () => void;
};

/** A question outside a check that one explicit key answers: Enter, pressed out of habit, decides nothing. */
export const YesNoScreen = ({title, shown, question, onAnswer, onBack}: YesNoScreenProps): ReactNode => {
	const look = useLook();
	const {columns, frameRows, isTooSmall} = useTerminalSize();
	const width = Math.min(columns, 100);
	useCommands((key) => {
		if (isTooSmall) return true;
		if (key !== KEYS.escape) return false;
		onBack();
		return true;
	});
	const gap = look.unicode ? ' · ' : ', ';
	const head = textRows(title, width, look, 'strong');
	const foot = textRows(['y yes', 'n no', 'Esc back', 'Ctrl+C leave'].join(gap), width, look, 'dim');
	const lines = [`${question} y / n`];
	const asked = textRows(lines[0] ?? '', width, look).length;
	// On a small screen the first sentences give way: what is to be confirmed stands last.
	const room = Math.max(0, frameRows - head.length - foot.length - asked);
	const body = rowsOf(shown, width, look);
	return (
		<Frame head={head} body={room === 0 ? [] : body.slice(-room)} foot={foot}>
			<Keyed lines={lines} width={width} keys={{y: () => onAnswer('yes'), n: () => onAnswer('no')}} />
		</Frame>
	);
};
