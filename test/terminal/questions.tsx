import {Box, type Key, Text, useInput} from 'ink';
import TextInput from 'ink-text-input';
import {type ReactNode, useState} from 'react';
import {renderInk} from '../helpers/ink.js';

/** Asks for one value after another, each in a field of its own. */
const Questions = ({onAnswer}: {readonly onAnswer: (text: string) => void}): ReactNode => {
	const [count, setCount] = useState(0);
	const [value, setValue] = useState('');
	const submit = (text: string) => {
		onAnswer(text);
		setCount(count + 1);
		setValue('');
	};
	return (
		<Box>
			<Text>value {count}: </Text>
			<TextInput key={count} value={value} onChange={setValue} onSubmit={submit} />
		</Box>
	);
};

/** Tells of every key that Ink hands on. */
export const Listener = ({onKey}: {readonly onKey: (input: string, key: Key) => void}): ReactNode => {
	useInput(onKey);
	return <Text>listening</Text>;
};

/** Shows questions and collects what is answered. */
export const startQuestions = () => {
	const answers: string[] = [];
	return {answers, ...renderInk(<Questions onAnswer={(text) => answers.push(text)} />)};
};
