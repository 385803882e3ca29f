import {leverHours, leverMarks} from '../../pages/pictures/lever-layout.js';
import type {ShownAs} from '../../pages/shown-lines.js';
import {words} from '../../words/index.js';
import {element} from '../html/markup.js';
import {dot, label, picture, stroke, type Told} from './shapes.js';

const [middleX, middleY, radius, height] = [104, 100, 70, 200];
const listX = 226;

/** Where the weighted lever stands on a clock face at each radius; a letter at its tip is explained beside it. */
export function leverSvg(lever: ShownAs<'lever'>, told: Told): string {
	const marks = leverMarks(lever);
	return picture(told, height, [
		element('circle', {cx: middleX, cy: middleY, r: radius, class: 'face'}),
		...hours(),
		...marks.flatMap(({clockDeg, letter}, index) => oneLever(clockDeg, letter, index)),
		dot(middleX, middleY, 'point', 5),
		...marks.map((mark, index) => label(listX, 70 + index * 22, words.pictures.lever.item(mark))),
	]);
}

function at(clockDeg: number, distance: number): readonly [number, number] {
	const turn = (clockDeg * Math.PI) / 180;
	return [middleX + distance * Math.sin(turn), middleY - distance * Math.cos(turn)];
}

const hours = (): string[] =>
	leverHours.flatMap(({clockDeg, number}) => {
		const [x, y] = at(clockDeg, radius - 13);
		return [
			stroke(at(clockDeg, radius), at(clockDeg, radius - (number ? 7 : 4)), 'axis'),
			...(number ? [label(x, y + 4, number, {'text-anchor': 'middle', class: 'soft'})] : []),
		];
	});

/** Letters of levers that stand alike are set one outside the other. */
function oneLever(clockDeg: number, letter: string, index: number): string[] {
	const [x, y] = at(clockDeg, radius + 12 + (index % 2) * 8);
	return [
		stroke([middleX, middleY], at(clockDeg, radius - 2), 'wanted'),
		label(x, y + 4, letter, {'text-anchor': 'middle'}),
	];
}
