import type {ReactNode} from 'react';
import {words} from '../words/index.js';
import {rowsOf} from './arrange.js';
import {footRows, textRows} from './body.js';
import {Frame} from './frame.js';
import {Keyed, keysOf} from './inputs/keyed.js';
import {headOfPage, skeletonOf} from './skeleton.js';
import {type PageProps, usePage} from './use-page.js';

/** A question outside a check that one explicit key answers: Enter, pressed out of habit, decides nothing. */
export const YesNoScreen = ({page: {title, shown}, prompt, onEntry, onBack}: PageProps<'yes-no'>): ReactNode => {
	const {look, width, frameRows} = usePage({onBack});
	const {hints, escapes, yesNo} = words.faces;
	const question = yesNo(prompt);
	const {head, room, filled, foot} = skeletonOf({
		...headOfPage(title, width, look),
		width,
		height: frameRows,
		look,
		answer: textRows(question, width, look).length,
		keys: footRows([hints.yes, hints.no, escapes.back, hints.leave], width, look),
	});
	// On a small screen the first sentences give way: what is to be confirmed stands last.
	const body = rowsOf(shown, width, look);
	return (
		<Frame head={head} body={filled(room === 0 ? [] : body.slice(-room))} foot={foot}>
			<Keyed lines={[question]} width={width} keys={keysOf({yes: () => onEntry('yes'), no: () => onEntry('no')})} />
		</Frame>
	);
};
