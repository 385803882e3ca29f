import {Box, Text, useApp} from 'ink';
import TextInput from 'ink-text-input';
import {type ReactNode, useState} from 'react';
import {ExitPaths} from '../../source/terminal/exit-paths.js';
import {FullScreen} from '../../source/terminal/full-screen.js';
import {KeyFeed} from '../../source/terminal/key-feed.js';
import {type Repaints, renderApp} from '../../source/terminal/render.js';
import {useTerminalSize} from '../../source/terminal/use-terminal-size.js';

/** Asks for values until one is "end"; throws in one way or another where one says so. */
const answers: string[] = [];

const Failing = (): ReactNode => {
	throw new Error('broken while drawing');
};

const Sample = (): ReactNode => {
	const [value, setValue] = useState('');
	const {columns, rows, frameRows, isTooSmall} = useTerminalSize();
	const {exit} = useApp();
	const submit = (text: string) => {
		answers.push(text);
		setValue('');
		if (text === 'end') exit('as asked');
		if (text === 'throw') throw new Error('broken while answering');
		if (text === 'reject') void Promise.reject(new Error('broken later'));
	};
	if (answers.at(-1) === 'draw') return <Failing />;
	if (isTooSmall) return <Text>Please enlarge the window</Text>;
	return (
		<Box flexDirection="column" height={frameRows}>
			<Text>
				Sample at {columns} x {rows}
			</Text>
			<Box borderStyle="single" flexGrow={1} flexDirection="column">
				<Text>Answers: {answers.join('|')}</Text>
			</Box>
			<Box>
				<Text>{'value > '}</Text>
				<TextInput value={value} onChange={setValue} onSubmit={submit} />
			</Box>
		</Box>
	);
};

export const runSample = async (): Promise<void> => {
	const feed = new KeyFeed(process.stdin);
	const screen = new FullScreen(process.stdout);
	const repaints: Repaints = {onRepaint: null};
	const exits = new ExitPaths({
		feed,
		screen,
		partingText: () => `Kept ${answers.length} answers.\n`,
		repaint: () => repaints.onRepaint?.(),
	});
	exits.install();
	try {
		const result = await renderApp(<Sample />, {feed, screen, repaints});
		exits.leave(0, `Ended ${String(result)}.\n`);
	} catch (error) {
		exits.fail(error);
	}
};
