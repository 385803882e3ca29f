import {Box, Text, useInput} from 'ink';
import {type ReactNode, useRef, useState} from 'react';
import type {Option} from '../../procedure/step.js';
import {printable} from '../../terminal/printable.js';
import {useKeys} from '../keys-context.js';
import {styleOf, useLook, written} from '../look.js';
import {linesOfOptions} from '../option-pages.js';

type SeveralProps = {
	readonly options: readonly Option[];
	/** Ids of those that were chosen before. */
	readonly marked: readonly string[];
	/** Lines that it may take. */
	readonly rows: number;
	readonly width: number;
	/** The numbers of what is marked, or what was typed where it is no number of a line. */
	readonly onEnter: (text: string) => void;
};

/** A list of which more than one may be chosen: a digit marks a line or takes its mark away, Enter takes what is marked. */
export const Several = ({options, marked, rows, width, onEnter}: SeveralProps): ReactNode => {
	const look = useLook();
	const keys = useKeys();
	// Kept beside the state, since two keys may come before one is drawn.
	const pressed = useRef(options.flatMap(({id}, index) => (marked.includes(id) ? [String(index + 1)] : [])).join(''));
	const [typed, setTyped] = useState(pressed.current);
	const press = (text: string): void => {
		pressed.current = text;
		setTyped(text);
	};
	useInput((input, {return: isEnter, backspace, delete: isDelete}) => {
		if (isEnter) {
			if (keys?.isHasty) return;
			const numbers = marksOf(pressed.current);
			const isMisfit = /[^\d\s,]/.test(pressed.current) || numbers.some((number) => number > options.length);
			onEnter(isMisfit ? pressed.current : numbers.join(' '));
			if (isMisfit) press('');
		} else if (backspace || isDelete) press('');
		else if (input !== '') press(pressed.current + input);
	});
	const numbers = marksOf(typed);
	// Every line is in sight: where there is no room for two, a label is cut.
	const isTight = linesOfOptions(options, width) > rows;
	return (
		<Box flexDirection="column">
			{options.map(({id, label}, index) => {
				const isMarked = numbers.includes(index + 1);
				const sign = look.unicode ? '❯' : '>';
				const text = printable(written(label, look), isTight ? width - 4 : undefined);
				return (
					<Box key={id} aria-role="checkbox" aria-state={{checked: isMarked}}>
						<Text wrap="wrap" {...styleOf(isMarked ? 'strong' : 'plain', look)}>
							{`${isMarked && !look.screenReader ? sign : ' '} ${index + 1} ${text}`}
						</Text>
					</Box>
				);
			})}
		</Box>
	);
};

/** Which lines are marked once these digits were pressed; the first line and the others take each other's marks away. */
const marksOf = (pressed: string): readonly number[] =>
	[...pressed.replace(/\D/g, '')].map(Number).reduce<readonly number[]>((marks, number) => {
		if (marks.includes(number)) return marks.filter((one) => one !== number);
		return number === 1 ? [1] : [...marks.filter((one) => one !== 1), number].sort((one, other) => one - other);
	}, []);
