import {render} from 'ink-testing-library';
import {useState} from 'react';
import {expect, test, vi} from 'vitest';
import type {Option} from '../../source/procedure/step.js';
import {Choice} from '../../source/screens/inputs/choice.js';
import {Field} from '../../source/screens/inputs/field.js';
import {Keyed} from '../../source/screens/inputs/keyed.js';
import {turns} from '../helpers/ink.js';

type Rendered = ReturnType<typeof render>;

/** Waits for a sentence, and until what was drawn with it listens to keys: React attaches it some turns later. */
const shows = async ({lastFrame}: Rendered, sentence: string): Promise<void> => {
	await vi.waitFor(() => expect(lastFrame()).toContain(sentence));
	await turns(12);
};

/** The testing library attaches its input in an effect; a key before that would be lost. */
async function ready(app: Rendered, sentence: string): Promise<Rendered> {
	await shows(app, sentence);
	await vi.waitFor(() => expect(app.stdin.listenerCount('readable')).toBeGreaterThan(0));
	return app;
}

const nothing = {initial: '', mayBeEmpty: false} as const;

const Typing = ({
	prompt = nothing,
	onSubmit,
}: {
	prompt?: Parameters<typeof Field>[0]['prompt'];
	onSubmit: (text: string) => void;
}) => {
	const [value, setValue] = useState('');
	return <Field value={value} unit="%" prompt={prompt} onChange={setValue} onSubmit={onSubmit} />;
};

test('A field shows what is typed with its unit, and Enter hands it over', async () => {
	const onSubmit = vi.fn();
	const app = await ready(render(<Typing onSubmit={onSubmit} />), '%');
	app.stdin.write('4,5');
	await shows(app, '> 4,5');
	app.stdin.write('\r');
	await vi.waitFor(() => expect(onSubmit).toHaveBeenCalledWith('4,5'));
});

test('A field takes text and Enter that come in one burst, as from a gauge that types', async () => {
	const onSubmit = vi.fn();
	const app = await ready(render(<Typing onSubmit={onSubmit} />), '%');
	app.stdin.write('12.5\r');
	await vi.waitFor(() => expect(onSubmit).toHaveBeenCalledWith('12.5'));
	expect(onSubmit).toHaveBeenCalledTimes(1);
});

test('An empty field says what Enter keeps, and keeps it', async () => {
	const onSubmit = vi.fn();
	const prompt = {initial: '68 mm', mayBeEmpty: true, given: true} as const;
	const app = await ready(render(<Typing prompt={prompt} onSubmit={onSubmit} />), 'Enter keeps 68 mm');
	expect(app.lastFrame()).toContain('- for none');
	app.stdin.write('\r');
	await vi.waitFor(() => expect(onSubmit).toHaveBeenCalledWith('68 mm'));
});

test('A field with an answer that does not pass says how to get to the ways out', async () => {
	const app = await ready(render(<Typing prompt={{...nothing, waysOut: true}} onSubmit={vi.fn()} />), 'type it anew');
	expect(app.lastFrame()).toContain('other ways out');
});

const options: readonly Option[] = ['inside the column', 'in a free loop', 'not known'].map((label, index) => ({
	id: `o${index}`,
	label,
}));

test('A list numbers its options, and a digit chooses at once', async () => {
	const onChoose = vi.fn();
	const app = await ready(
		render(<Choice options={options} rows={5} width={60} onChoose={onChoose} />),
		'2 in a free loop',
	);
	app.stdin.write('2');
	await vi.waitFor(() => expect(onChoose).toHaveBeenCalledWith('o1'));
});

test('A list opens on the earlier answer, and Enter keeps it', async () => {
	const onChoose = vi.fn();
	const app = await ready(
		render(<Choice options={options} initial="o2" rows={5} width={60} onChoose={onChoose} />),
		'❯ 3 not known',
	);
	app.stdin.write('\r');
	await vi.waitFor(() => expect(onChoose).toHaveBeenCalledWith('o2'));
});

test('A list longer than its room is turned by its last line, each option with a digit of its own', async () => {
	const onChoose = vi.fn();
	const many = Array.from({length: 12}, (_, index): Option => ({id: `o${index}`, label: `option ${index}`}));
	const app = await ready(render(<Choice options={many} rows={5} width={60} onChoose={onChoose} />), '5 more');
	app.stdin.write('5');
	await shows(app, '1 option 4');
	app.stdin.write('1');
	await vi.waitFor(() => expect(onChoose).toHaveBeenCalledWith('o4'));
});

test('Options that differ only at their ends are broken in a narrow window, not cut', async () => {
	const long = ['rim', 'spindle'].map(
		(end): Option => ({id: end, label: `force of my hand to start it, plus toward the ${end}`}),
	);
	const app = await ready(render(<Choice options={long} rows={6} width={40} onChoose={vi.fn()} />), 'force');
	expect(app.lastFrame()).toContain('rim');
	expect(app.lastFrame()).toContain('spindle');
});

test('A question by keys answers to its keys alone: Enter and others confirm nothing', async () => {
	const yes = vi.fn();
	const no = vi.fn();
	const app = await ready(
		render(<Keyed lines={['Platter stopped y / n']} width={60} keys={{y: yes, n: no}} />),
		'y / n',
	);
	for (const key of ['\r', ' ', '1', 'x']) app.stdin.write(key);
	app.stdin.write('Y');
	await vi.waitFor(() => expect(yes).toHaveBeenCalledTimes(1));
	expect(no).not.toHaveBeenCalled();
});
