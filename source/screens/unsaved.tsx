import type {ReactNode} from 'react';
import {words} from '../words/index.js';
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
	const {title, whatIsSaved, keys} = words.faces.unsaved[answerSaved ? 'filing' : 'answer'];
	return (
		<Frame
			head={textRows(title, width, look, 'bad')}
			body={[...textRows(sentence, width, look), {text: '', tone: 'plain'}, ...textRows(whatIsSaved, width, look)]}
			foot={textRows(keys, width, look, 'dim')}
		/>
	);
};
