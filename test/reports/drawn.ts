import {SaxesParser} from 'saxes';

type Drawn = {readonly name: string; readonly at: Readonly<Record<string, string>>; text: string};

/** The elements of a picture with their attributes, read by an XML parser. */
export function drawnIn(svg: string): Drawn[] {
	const found: Drawn[] = [];
	const parser = new SaxesParser();
	parser.on('opentag', ({name, attributes}) => found.push({name, at: attributes, text: ''}));
	parser.on('text', (text) => {
		const last = found.at(-1);
		if (last) last.text += text;
	});
	parser.write(svg).close();
	return found;
}

export const number = (one: Drawn | undefined, name: string): number => Number(one?.at[name]);
export const ofClass = (all: readonly Drawn[], className: string): Drawn[] =>
	all.filter(({at}) => at.class === className);
/** A number on an axis, as numbers are printed everywhere. */
const axisNumbers = (all: readonly Drawn[]) =>
	all
		.filter(({name, text}) => name === 'text' && /^[+-]?\d+(?:\.\d+)?$/.test(text))
		.map((one) => ({one, value: Number(one.text)}));

/** The scale that the printed numbers of an axis tell; the place of a label against its tick is taken off. */
export function scaleBy(all: readonly Drawn[], coordinate: 'x' | 'y', keep: (one: Drawn) => boolean, offset = 0) {
	const numbers = axisNumbers(all).filter(({one}) => keep(one));
	const [first, last] = [numbers[0], numbers.at(-1)];
	if (!first || !last) throw new Error('fewer than two numbers on the axis');
	const [from, to] = [number(first.one, coordinate), number(last.one, coordinate)];
	return (value: number) => from - offset + ((value - first.value) / (last.value - first.value)) * (to - from);
}
