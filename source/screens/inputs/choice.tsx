import {Box, Text} from 'ink';
import SelectInput from 'ink-select-input';
import {type ReactNode, useMemo, useState} from 'react';
import type {Option} from '../../procedure/step.js';
import {printable} from '../../terminal/printable.js';
import {styleOf, useLook, written} from '../look.js';

type ChoiceProps = {
	readonly options: readonly Option[];
	readonly initial?: string | undefined;
	/** Lines that it may take. */
	readonly rows: number;
	readonly width: number;
	readonly onChoose: (id: string) => void;
};

const Mark = ({isSelected = false}: {readonly isSelected?: boolean}): ReactNode => {
	const {unicode} = useLook();
	return <Text>{isSelected ? (unicode ? '❯ ' : '> ') : '  '}</Text>;
};

const Label = ({isSelected = false, label}: {readonly isSelected?: boolean; readonly label: string}): ReactNode => {
	const look = useLook();
	return (
		<Box aria-role="radio" aria-state={{selected: isSelected}}>
			<Text wrap="truncate" {...styleOf(isSelected ? 'strong' : 'plain', look)}>
				{label}
			</Text>
		</Box>
	);
};

/** There are nine digits. */
export const mostShown = 9;
const more: Option = {id: '\u0000more', label: 'more …'};

/** A page of the options: so many that each has a digit; a last line leads to the next page. */
function pageOfOptions(options: readonly Option[], page: number, rows: number): readonly Option[] {
	const room = Math.max(2, Math.min(mostShown, rows));
	if (options.length <= room) return options;
	const size = room - 1;
	const start = (page % Math.ceil(options.length / size)) * size;
	return [...options.slice(start, start + size), more];
}

/** A list to choose from: by its digit at once, or by arrows and Enter. A long one is turned page by page. */
export const Choice = ({options, initial, rows, width, onChoose}: ChoiceProps): ReactNode => {
	const look = useLook();
	const size = Math.max(1, Math.min(mostShown, Math.max(2, rows)) - 1);
	const [page, setPage] = useState(() =>
		Math.floor(
			Math.max(
				0,
				options.findIndex(({id}) => id === initial),
			) / size,
		),
	);
	const shown = useMemo(() => pageOfOptions(options, page, rows), [options, page, rows]);
	const items = useMemo(
		() =>
			shown.map(({id, label}, index) => ({
				value: id,
				label: printable(`${index + 1} ${written(label, look)}`, width - 2),
			})),
		[shown, width, look],
	);
	return (
		<SelectInput
			key={page}
			items={items}
			initialIndex={Math.max(
				0,
				shown.findIndex(({id}) => id === initial),
			)}
			indicatorComponent={Mark}
			itemComponent={Label}
			onSelect={({value}) => (value === more.id ? setPage((now) => now + 1) : onChoose(value))}
		/>
	);
};
