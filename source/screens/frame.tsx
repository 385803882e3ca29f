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
			{rows.map(({text, tone, spans}, index) => (
				// Lines have no identity beyond their place.
				// biome-ignore lint/suspicious/noArrayIndexKey: see above
				<Text key={index} {...styleOf(tone, look)}>
					{index > 0 ? '\n' : ''}
					{spans ? <Pieces text={text} spans={spans} look={look} /> : text}
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
