import {type ReactNode, useState} from 'react';
import {words} from '../words/index.js';
import {rowsOf} from './arrange.js';
import {footRows} from './body.js';
import {Frame} from './frame.js';
import {Field} from './inputs/field.js';
import {fieldRows, headOfPage, skeletonOf} from './skeleton.js';
import {type PageProps, usePage} from './use-page.js';

/** A line to type, outside a check. */
export const FieldScreen = ({
	page: {title, shown},
	prompt: {initial, mayBeEmpty, unit},
	onEntry,
	onBack,
}: PageProps<'field'>): ReactNode => {
	const [typed, setTyped] = useState('');
	const {look, width, frameRows} = usePage({onBack, onClear: () => setTyped('')});
	const {hints, escapes} = words.faces;
	const {head, room, filled, foot} = skeletonOf({
		...headOfPage(title, width, look),
		width,
		height: frameRows,
		look,
		answer: fieldRows(typed, width, look),
		keys: footRows([hints.accept, escapes.back, hints.leave], width, look),
	});
	// On a small screen the last sentences give way: the field must stay in sight.
	const body = rowsOf(shown, width, look).slice(0, room);
	return (
		<Frame head={head} body={filled(body)} foot={foot}>
			<Field
				value={typed}
				unit={unit}
				prompt={{initial, mayBeEmpty, given: true}}
				onChange={setTyped}
				onSubmit={onEntry}
			/>
		</Frame>
	);
};
