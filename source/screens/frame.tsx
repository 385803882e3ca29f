import {Box, Text} from 'ink';
import {memo, type ReactNode} from 'react';
import type {Row} from './body.js';
import {styleOf, useLook} from './look.js';

/** Lines of text in one piece, drawn anew only when they change: Ink pays for every component of every frame. */
export const Rows = memo(({rows}: {readonly rows: readonly Row[]}): ReactNode => {
	const look = useLook();
	if (rows.length === 0) return null;
	return (
		<Text wrap="truncate">
			{runsOf(rows).map(({lines, tone}, index) => (
				// Lines have no identity beyond their place.
				// biome-ignore lint/suspicious/noArrayIndexKey: see above
				<Text key={index} {...styleOf(tone, look)}>
					{index > 0 ? '\n' : ''}
					{lines.join('\n')}
				</Text>
			))}
		</Text>
	);
});

type Run = {readonly lines: string[]; readonly tone: Row['tone']};

/** Neighbours of one tone together; an empty line has none of its own. */
function runsOf(rows: readonly Row[]): readonly Run[] {
	const runs: Run[] = [];
	for (const {text, tone} of rows) {
		const last = runs.at(-1);
		if (last && (last.tone === tone || (text === '' && last.tone !== 'bar'))) last.lines.push(text);
		else runs.push({lines: [text], tone});
	}
	return runs;
}

type FrameProps = {
	readonly head: readonly Row[];
	readonly body: readonly Row[];
	readonly foot: readonly Row[];
	/** The control that takes the entry. */
	readonly children?: ReactNode;
};

/** Every screen: head line, body, the control, and the keys that work now. */
export const Frame = ({head, body, foot, children}: FrameProps): ReactNode => (
	<Box flexDirection="column">
		<Rows rows={head} />
		<Rows rows={body} />
		{children}
		<Rows rows={foot} />
	</Box>
);
