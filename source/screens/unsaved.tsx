import type {ReactNode} from 'react';
import {textRows} from './body.js';
import {Frame} from './frame.js';
import {useLook} from './look.js';

/** An answer that could not be put on the disk: it is kept here and can be tried again. */
export const Unsaved = ({sentence, width}: {readonly sentence: string; readonly width: number}): ReactNode => {
	const look = useLook();
	return (
		<Frame
			head={textRows('NOT SAVED', width, look, 'bad')}
			body={[
				...textRows(sentence, width, look),
				{text: '', tone: 'plain'},
				...textRows('Your answer is still here. Everything before it is saved.', width, look),
			]}
			foot={textRows('Enter try again · Esc drop this answer', width, look, 'dim')}
		/>
	);
};
