import type {ReactNode} from 'react';
import {textRows} from './body.js';
import {Frame} from './frame.js';
import {useLook} from './look.js';

type UnsavedProps = {
	readonly sentence: string;
	/** The answer is on the disk; only the whole check could not be filed. */
	readonly answerSaved: boolean;
	readonly width: number;
};

/** An answer that could not be put on the disk: it is kept here and can be tried again. */
export const Unsaved = ({sentence, answerSaved, width}: UnsavedProps): ReactNode => {
	const look = useLook();
	return (
		<Frame
			head={textRows(answerSaved ? 'NOT FILED YET' : 'NOT SAVED', width, look, 'bad')}
			body={[
				...textRows(sentence, width, look),
				{text: '', tone: 'plain'},
				...textRows(
					answerSaved
						? 'All answers are saved; only the check could not be put away. It is filed when you go on with it.'
						: 'Your answer is still here. Everything before it is saved.',
					width,
					look,
				),
			]}
			foot={textRows(
				`Enter try again · Esc ${answerSaved ? 'first screen' : 'drop this answer'} · Ctrl+C leave`,
				width,
				look,
				'dim',
			)}
		/>
	);
};
