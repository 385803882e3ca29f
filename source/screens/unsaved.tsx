import type {ReactNode} from 'react';
import {wrapped} from './body.js';
import {Frame} from './frame.js';

/** An answer that could not be put on the disk: it is kept here and can be tried again. */
export const Unsaved = ({sentence, width}: {readonly sentence: string; readonly width: number}): ReactNode => (
	<Frame
		head={[{text: 'NOT SAVED', tone: 'bad'}]}
		body={[
			...wrapped(sentence, width).map((text) => ({text, tone: 'plain'}) as const),
			{text: '', tone: 'plain'},
			...wrapped('Your answer is still here. Everything before it is saved.', width).map(
				(text) => ({text, tone: 'plain'}) as const,
			),
		]}
		foot={[{text: 'Enter try again · Esc drop this answer', tone: 'dim'}]}
	/>
);
