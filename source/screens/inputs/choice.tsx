import {Box, Text} from 'ink';
import SelectInput from 'ink-select-input';
import {type ReactNode, useMemo, useState} from 'react';
import type {Option} from '../../procedure/step.js';
import {printable} from '../../terminal/printable.js';
import {styleOf, useLook, written} from '../look.js';
import {more, optionPages} from '../option-pages.js';
import {useLineKeys} from './use-line-keys.js';

type ChoiceProps = {
	readonly options: readonly Option[];
	readonly initial?: string | undefined;
	/** Lines that it may take. */
	readonly rows: number;
	readonly width: number;
	readonly onChoose: (id: string) => void;
	/** Enter after a text that is no digit of a line. */
	readonly onMisfit: (typed: string) => void;
};

const Mark = ({isSelected = false}: {readonly isSelected?: boolean}): ReactNode => {
	const {unicode, screenReader} = useLook();
	if (screenReader) return null;
	return (
		<Box flexShrink={0}>
			<Text>{isSelected ? (unicode ? '❯ ' : '> ') : '  '}</Text>
		</Box>
	);
};

const Label = ({isSelected = false, label}: {readonly isSelected?: boolean; readonly label: string}): ReactNode => {
	const look = useLook();
	return (
		<Box aria-role="radio" aria-state={{selected: isSelected}}>
			<Text wrap="wrap" {...styleOf(isSelected ? 'strong' : 'plain', look)}>
				{label}
			</Text>
		</Box>
	);
};

/** A list to choose from: a digit or the arrows mark a line, Enter takes it. A long one is turned page by page. */
export const Choice = ({options, initial, rows, width, onChoose, onMisfit}: ChoiceProps): ReactNode => {
	const look = useLook();
	const pages = useMemo(() => optionPages(options, rows, width), [options, rows, width]);
	const [turned, setTurned] = useState(() =>
		Math.max(
			0,
			pages.findIndex((page) => page.some(({id}) => id === initial)),
		),
	);
	const page = turned % pages.length;
	const shown = pages[page] ?? options;
	const items = useMemo(
		() => shown.map(({id, label}, index) => ({value: id, label: `${index + 1} ${printable(written(label, look))}`})),
		[shown, look],
	);
	const first = Math.max(
		0,
		shown.findIndex(({id}) => id === initial),
	);
	// The list keeps its mark to itself: a new one begins with the line that a digit marked.
	const [mark, setMark] = useState({line: first, times: 0});
	const marked = (line = first): void => setMark(({times}) => ({line, times: times + 1}));
	const turnOn = (): void => {
		setTurned(page + 1);
		marked(0);
	};
	useLineKeys(items.length, {onMark: marked, onMisfit});
	return (
		<SelectInput
			key={`${page} ${mark.times}`}
			items={items}
			initialIndex={mark.line}
			indicatorComponent={Mark}
			itemComponent={Label}
			onSelect={({value}) => (value === more.id ? turnOn() : onChoose(value))}
		/>
	);
};
