import {type ReactNode, useState} from 'react';
import type {PagePrompt} from '../pages/page.js';
import type {Shown} from '../pages/shown-lines.js';
import {KEYS} from '../terminal/keys.js';
import {useTerminalSize} from '../terminal/use-terminal-size.js';
import {rowsOf, textRows} from './body.js';
import {Frame} from './frame.js';
import {Field} from './inputs/field.js';
import {useCommands} from './keys-context.js';
import {useLook} from './look.js';

type FieldScreenProps = {
	readonly title: string;
	readonly shown: readonly Shown[];
	readonly prompt: Extract<PagePrompt, {kind: 'field'}>;
	readonly onEnter: (text: string) => void;
	readonly onBack: () => void;
};

/** A line to type, outside a check. */
export const FieldScreen = ({title, shown, prompt, onEnter, onBack}: FieldScreenProps): ReactNode => {
	const look = useLook();
	const {columns, frameRows, isTooSmall} = useTerminalSize();
	const width = Math.min(columns, 100);
	const [typed, setTyped] = useState('');
	useCommands(
		(key) => {
			if (isTooSmall) return true;
			if (key !== KEYS.escape) return false;
			onBack();
			return true;
		},
		() => setTyped(''),
	);
	const {initial, mayBeEmpty, unit} = prompt;
	const gap = look.unicode ? ' · ' : ', ';
	const head = textRows(title, width, look, 'strong');
	const foot = textRows(['Enter accept', 'Esc back', 'Ctrl+C leave'].join(gap), width, look, 'dim');
	// On a small screen the last sentences give way: the field must stay in sight.
	const field = textRows(`> ${typed}  ${unit}`, width, look).length;
	const body = rowsOf(shown, width, look).slice(0, Math.max(0, frameRows - head.length - foot.length - field));
	return (
		<Frame head={head} body={body} foot={foot}>
			<Field
				value={typed}
				unit={unit}
				prompt={{initial, mayBeEmpty, given: true}}
				onChange={setTyped}
				onSubmit={onEnter}
			/>
		</Frame>
	);
};
