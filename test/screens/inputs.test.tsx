import {render} from 'ink-testing-library';
import {useState} from 'react';
import {expect, test, vi} from 'vitest';
import type {Option} from '../../source/procedure/step.js';
import {Choice} from '../../source/screens/inputs/choice.js';
import {Field} from '../../source/screens/inputs/field.js';
import {Keyed, Still} from '../../source/screens/inputs/keyed.js';
import {Several} from '../../source/screens/inputs/several.js';
import {KeysProvider} from '../../source/screens/keys-context.js';
import {renderInk} from '../helpers/ink.js';
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

/** A list behind the program's own key feed, and what became of it. */
function showList(given: Partial<Parameters<typeof Choice>[0]> = {}) {
	const onChoose = vi.fn();
	const onMisfit = vi.fn();
	const props = {options, rows: 5, width: 60, onChoose, onMisfit, ...given};
	const shown = renderInk((feed) => (
		<KeysProvider value={feed}>
			<Choice {...props} />
		</KeysProvider>
	));
	return {...shown, onChoose, onMisfit};
}

test('A list numbers its options; a digit marks its line and Enter takes it', async () => {
	const {type, waitFor, onChoose} = showList();
	await waitFor('❯ 1 inside the column');
	await type('2');
	await waitFor('❯ 2 in a free loop');
	expect(onChoose).not.toHaveBeenCalled();
	await type('\r');
	expect(onChoose.mock.calls).toEqual([['o1']]);
});

test('A digit and its Enter in one burst take the line, and an arrow may follow the digit', async () => {
	const {type, press, onChoose} = showList();
	await type('3\r');
	await type('1');
	await press('down', 'enter');
	expect(onChoose.mock.calls).toEqual([['o2'], ['o1']]);
});

test('A list opens on the earlier answer, and Enter keeps it', async () => {
	const {press, waitFor, onChoose} = showList({initial: 'o2'});
	await waitFor('❯ 3 not known');
	await press('enter');
	expect(onChoose.mock.calls).toEqual([['o2']]);
});

test.each(['2.5', '-1.5', '+2', '2.1 out', 'out 2', '12', '0', '4', '2,5 %'])(
	"'%s' on a list takes no line, and the mark goes back to where it was",
	async (reading) => {
		const {type, press, waitFor, onChoose, onMisfit} = showList({initial: 'o2'});
		await type(`${reading}\r`);
		expect(onChoose).not.toHaveBeenCalled();
		expect(onMisfit.mock.calls).toEqual([[reading]]);
		await waitFor('❯ 3 not known');
		await press('up', 'enter');
		expect(onChoose.mock.calls).toEqual([['o1']]);
	},
);

test('Two Enters in haste count as one, and an Enter after a digit counts always', async () => {
	const {type, onChoose} = showList();
	await type('\r\r');
	expect(onChoose.mock.calls).toEqual([['o0']]);
	await type('2\r3\r');
	expect(onChoose.mock.calls).toEqual([['o0'], ['o1'], ['o2']]);
});

test('A list longer than its room is turned by its last line, each option with a digit of its own', async () => {
	const many = Array.from({length: 12}, (_, index): Option => ({id: `o${index}`, label: `option ${index}`}));
	const {type, waitFor, onChoose} = showList({options: many});
	await waitFor(`5 ${faces.moreOptions}`);
	await type('5\r');
	await waitFor('❯ 1 option 4');
	await type('2\r');
	expect(onChoose.mock.calls).toEqual([['o5']]);
});

test('A line of a long list of twenty is reached by digits and Enter alone, and the first page comes again', async () => {
	const many = Array.from({length: 20}, (_, index): Option => ({id: `o${index}`, label: `option ${index}`}));
	const {type, waitFor, onChoose} = showList({options: many, rows: 12});
	await waitFor(`9 ${faces.moreOptions}`);
	for (const first of ['1 option 8', '1 option 16', '1 option 0', '1 option 8']) {
		await type(first === '1 option 0' ? '5\r' : '9\r');
		await waitFor(`❯ ${first}`);
	}
	await type('8\r');
	expect(onChoose.mock.calls).toEqual([['o15']]);
});

test('Options that differ only at their ends are broken in a narrow window, not cut', async () => {
	const long = ['rim', 'spindle'].map(
		(end): Option => ({id: end, label: `force of my hand to start it, plus toward the ${end}`}),
	);
	const app = await ready(
		render(<Choice options={long} rows={6} width={40} onChoose={vi.fn()} onMisfit={vi.fn()} />),
		'force',
	);
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

test('Whether all is still so is answered by y at once; a digit marks what is not, and only Enter takes it', async () => {
	const onEntry = vi.fn();
	const items = ['guard', 'wires'];
	const {type, waitFor} = renderInk((feed) => (
		<KeysProvider value={feed}>
			<Still prompt={{key: 'still', kind: 'still', items}} width={60} onEntry={onEntry} />
		</KeysProvider>
	));
	await waitFor(faces.noLonger({number: 2, item: 'wires'}));
	await type('\r');
	await type('2');
	await waitFor(faces.noLonger({number: 2, item: 'wires', isMarked: true}));
	expect(onEntry).not.toHaveBeenCalled();
	await type('.5\r');
	await waitFor(faces.noLonger({number: 2, item: 'wires'}));
	await type('\r');
	expect(onEntry.mock.calls).toEqual([[{kind: 'text', text: '2.5'}]]);
	await type('1\r');
	await type('y');
	expect(onEntry.mock.calls.slice(1)).toEqual([[{kind: 'number', number: 1}], [{kind: 'yes'}]]);
});

test('Options with numbers of their own are reached by these from every page, two digits too', async () => {
	const many = Array.from(
		{length: 15},
		(_, index): Option => ({id: `o${index}`, label: `stage ${index}`, number: index}),
	);
	const {type, waitFor, onChoose} = showList({options: many});
	await waitFor('❯  0 stage 0');
	await type('1');
	await waitFor('❯  1 stage 1');
	await type('2');
	await waitFor('❯ 12 stage 12');
	await type('\r');
	expect(onChoose.mock.calls).toEqual([['o12']]);
});

const several: readonly Option[] = ['none of it', 'oiled', 'moved'].map((label) => ({id: label, label}));

test.each([
	['marks a line with a digit, and more than one', '23', '2 3'],
	['takes a mark away with the same digit', '232', '3'],
	['keeps the first line apart: it takes the other marks away', '231', '1'],
	['keeps the first line apart: another mark takes it away', '13', '3'],
	['forgets its marks at Backspace', '2\u007f3', '3'],
	['hands over what is no number of a line, for a sentence why', '2.5', '2.5'],
	['hands over a number that it does not have', '7', '7'],
	['hands over nothing where nothing is marked', '', ''],
])('A list of which several may be chosen %s', async (_what, typed, text) => {
	const onEnter = vi.fn();
	const app = renderInk(<Several options={several} marked={[]} rows={9} width={60} onEnter={onEnter} />);
	for (const key of typed) await app.type(key);
	await app.type('\r');
	await until(() => expect(onEnter).toHaveBeenCalledWith(text));
	expect(onEnter).toHaveBeenCalledTimes(1);
});

test('A list of which several may be chosen shows what is marked, also from before', async () => {
	const app = renderInk(<Several options={several} marked={['oiled']} rows={9} width={60} onEnter={() => {}} />);
	await until(() => expect(app.frame()).toMatch(/❯ 2 oiled/));
	await app.type('3');
	await until(() => expect(app.frame()).toMatch(/❯ 3 moved/));
	expect(app.frame()).toMatch(/❯ 2 oiled/);
	expect(app.frame()).not.toMatch(/❯ 1/);
});
