import {Box, Text} from 'ink';
import {memo, type ReactNode} from 'react';
import type {Row, Span} from './body.js';
import {type Look, styleOf, useLook} from './look.js';
import {piecesOf} from './pieces.js';

/** Lines of text in one piece, drawn anew only when they change: Ink pays for every component of every frame. */
export const Rows = memo(({rows}: {readonly rows: readonly Row[]}): ReactNode => {
	const look = useLook();
	if (rows.length === 0) return null;
	return (
		<Text wrap="truncate">
			{runsOf(rows).map(({lines, tone, spans}, index) => (
				// Lines have no identity beyond their place.
				// biome-ignore lint/suspicious/noArrayIndexKey: see above
				<Text key={index} {...styleOf(tone, look)}>
					{index > 0 ? '\n' : ''}
					{spans ? <Pieces text={lines[0] ?? ''} spans={spans} look={look} /> : lines.join('\n')}
				</Text>
			))}
		</Text>
	);
});

type PiecesProps = {readonly text: string; readonly spans: readonly Span[]; readonly look: Look};

/** A line that is meant differently from cell to cell. */
const Pieces = ({text, spans, look}: PiecesProps): ReactNode =>
	piecesOf(text, spans).map((piece) => (
		<Text key={piece.from} {...styleOf(piece.tone, look)}>
			{piece.text}
		</Text>
	));

type Run = {readonly lines: string[]; readonly tone: Row['tone']; readonly spans?: readonly Span[] | undefined};

/** Neighbours of one tone together; an empty line has none of its own, and one of several tones stands alone. */
function runsOf(rows: readonly Row[]): readonly Run[] {
	const runs: Run[] = [];
	for (const {text, tone, spans} of rows) {
		const last = runs.at(-1);
		const isAlike = last?.tone === tone || (text === '' && last?.tone !== 'bar');
		if (last && !last.spans && !spans && isAlike) last.lines.push(text);
		else runs.push({lines: [text], tone, spans});
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
