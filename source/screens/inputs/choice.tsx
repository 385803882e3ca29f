import {Box, Text} from 'ink';
import SelectInput from 'ink-select-input';
import {type ReactNode, useMemo, useState} from 'react';
import type {Option} from '../../procedure/step.js';
import {printable} from '../../terminal/printable.js';
import {styleOf, useLook, written} from '../look.js';
import {hasNumbers, more, numberOf, optionPages} from '../option-pages.js';
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

/** What stands before a label; among numbers of two digits, which are aligned, what leads on has none. */
const markOf = (option: Option, index: number, isNumbered: boolean): string => {
	if (!isNumbered) return `${index + 1} `;
	return option.number === undefined ? '   ' : `${String(option.number).padStart(2)} `;
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
	const isNumbered = hasNumbers(options);
	const page = turned % pages.length;
	const shown = pages[page] ?? options;
	const items = useMemo(
		() =>
			shown.map((one, index) => ({
				value: one.id,
				label: `${markOf(one, index, isNumbered)}${printable(written(one.label, look))}`,
			})),
		[shown, look, isNumbered],
	);
	const first = Math.max(
		0,
		shown.findIndex(({id}) => id === initial),
	);
	// The list keeps its mark to itself: a new one begins with the line that a digit marked.
	const [line, setLine] = useState({line: first, times: 0});
	const marked = (at = first): void => setLine(({times}) => ({line: at, times: times + 1}));
	const turnOn = (): void => {
		setTurned(page + 1);
		marked(0);
	};
	// A number of its own marks an option from every page.
	const reachable = isNumbered ? options : shown;
	const mark = (number: number | undefined): void => {
		const option = reachable.find((one, index) => numberOf(one, index) === number);
		const at = option && isNumbered ? pages.findIndex((some) => some.includes(option)) : -1;
		const to = at < 0 ? page : at;
		setTurned(to);
		marked(option ? (pages[to] ?? options).indexOf(option) : undefined);
	};
	useLineKeys(reachable.map(numberOf), {onMark: mark, onMisfit});
	return (
		<SelectInput
			key={`${page} ${line.times}`}
			items={items}
			initialIndex={line.line}
			indicatorComponent={Mark}
			itemComponent={Label}
			onSelect={({value}) => (value === more.id ? turnOn() : onChoose(value))}
		/>
	);
};
