import {render} from 'ink-testing-library';
import {useState} from 'react';
import {expect, test, vi} from 'vitest';
import type {Option} from '../../source/procedure/step.js';
import {Choice} from '../../source/screens/inputs/choice.js';
import {Field} from '../../source/screens/inputs/field.js';
import {Keyed} from '../../source/screens/inputs/keyed.js';
import {KEYS} from '../../source/terminal/keys.js';
import {words} from '../helpers/said.js';

const {faces} = words;

type Rendered = ReturnType<typeof render>;

/** Looks until it is so, however busy the machine is. */
const until = (look: () => void): Promise<void> => vi.waitFor(look, {timeout: 60_000, interval: 10});

const shows = ({lastFrame}: Rendered, sentence: string): Promise<void> =>
	until(() => expect(lastFrame()).toContain(sentence));

/** Keys are listened to from an effect on, with the same one that attaches the input: before that they would be lost. */
async function ready(app: Rendered, sentence: string): Promise<Rendered> {
	await shows(app, sentence);
	await until(() => expect(app.stdin.listenerCount('readable')).toBeGreaterThan(0));
	return app;
}

/** A list that took the place of another one answers once its mark moves with the arrow. */
async function answers(app: Rendered): Promise<void> {
	const marked = () => /❯ .*/.exec(app.lastFrame() ?? '')?.[0];
	const before = marked();
	await until(() => {
		app.stdin.write(KEYS.down);
		expect(marked()).not.toBe(before);
	});
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
	await until(() => expect(onSubmit).toHaveBeenCalledWith('4,5'));
});

test('A field takes text and Enter that come in one burst, as from a gauge that types', async () => {
	const onSubmit = vi.fn();
	const app = await ready(render(<Typing onSubmit={onSubmit} />), '%');
	app.stdin.write('12.5\r');
	await until(() => expect(onSubmit).toHaveBeenCalledWith('12.5'));
	expect(onSubmit).toHaveBeenCalledTimes(1);
});

test('An empty field says what Enter keeps, and keeps it', async () => {
	const onSubmit = vi.fn();
	const prompt = {initial: '68 mm', mayBeEmpty: true, given: true} as const;
	const app = await ready(
		render(<Typing prompt={prompt} onSubmit={onSubmit} />),
		faces.field.keeps({text: '68 mm', mayBeEmpty: true}),
	);
	app.stdin.write('\r');
	await until(() => expect(onSubmit).toHaveBeenCalledWith('68 mm'));
});

test('A field with an answer that does not pass says how to get to the ways out', async () => {
	const app = await ready(render(<Typing prompt={{...nothing, waysOut: true}} onSubmit={vi.fn()} />), '> ');
	expect(app.lastFrame()).toContain(faces.field.waysOut);
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
	await until(() => expect(onChoose).toHaveBeenCalledWith('o1'));
});

test('A list opens on the earlier answer, and Enter keeps it', async () => {
	const onChoose = vi.fn();
	const app = await ready(
		render(<Choice options={options} initial="o2" rows={5} width={60} onChoose={onChoose} />),
		'❯ 3 not known',
	);
	app.stdin.write('\r');
	await until(() => expect(onChoose).toHaveBeenCalledWith('o2'));
});

test('A list longer than its room is turned by its last line, each option with a digit of its own', async () => {
	const onChoose = vi.fn();
	const many = Array.from({length: 12}, (_, index): Option => ({id: `o${index}`, label: `option ${index}`}));
	const app = await ready(
		render(<Choice options={many} rows={5} width={60} onChoose={onChoose} />),
		`5 ${faces.moreOptions}`,
	);
	app.stdin.write('5');
	await shows(app, '1 option 4');
	await answers(app);
	app.stdin.write('1');
	await until(() => expect(onChoose).toHaveBeenCalledWith('o4'));
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
	await until(() => expect(yes).toHaveBeenCalledTimes(1));
	expect(no).not.toHaveBeenCalled();
});
