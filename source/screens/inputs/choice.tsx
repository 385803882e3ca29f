import {Box, Text} from 'ink';
import SelectInput from 'ink-select-input';
import {type ReactNode, useMemo} from 'react';
import type {Option} from '../../procedure/step.js';
import {printable} from '../../terminal/printable.js';
import {styleOf, useLook} from '../look.js';

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

/** A list to choose from: by its number at once, or by arrows and Enter. Only a list that fits is numbered. */
export const Choice = ({options, initial, rows, width, onChoose}: ChoiceProps): ReactNode => {
	const fits = options.length <= Math.min(9, rows);
	const items = useMemo(
		() =>
			options.map(({id, label}, index) => ({
				value: id,
				label: printable(fits ? `${index + 1} ${label}` : label, width - 2),
			})),
		[options, fits, width],
	);
	return (
		<SelectInput
			items={items}
			initialIndex={Math.max(
				0,
				options.findIndex(({id}) => id === initial),
			)}
			{...(options.length > rows ? {limit: Math.max(1, rows)} : {})}
			indicatorComponent={Mark}
			itemComponent={Label}
			onSelect={({value}) => onChoose(value)}
		/>
	);
};
