import {plainNumber} from '../../words/wording.js';
import {element} from '../html/markup.js';
import type {Lever} from '../report.js';
import {dot, label, picture, stroke, type Told} from './shapes.js';

const [middleX, middleY, radius, height] = [104, 100, 70, 200];
const listX = 226;

/** Where the weighted lever stands on a clock face at each radius; a letter at its tip is explained beside it. */
export const leverSvg = ({places}: Lever, told: Told): string =>
	picture(told, height, [
		element('circle', {cx: middleX, cy: middleY, r: radius, class: 'face'}),
		...hours(),
		...places.flatMap(({clockDeg}, index) => lever(clockDeg, letterOf(index), index)),
		dot(middleX, middleY, 'point', 5),
		...places.map(({radiusMm, clockDeg}, index) =>
			label(listX, 70 + index * 22, `${letterOf(index)}   ${plainNumber(radiusMm)} mm: ${clockTime(clockDeg)}`),
		),
	]);

const letterOf = (index: number): string => String.fromCharCode('a'.charCodeAt(0) + (index % 26));

function at(clockDeg: number, distance: number): readonly [number, number] {
	const turn = (clockDeg * Math.PI) / 180;
	return [middleX + distance * Math.sin(turn), middleY - distance * Math.cos(turn)];
}

const hours = (): string[] =>
	Array.from({length: 12}, (_, index) => index + 1).flatMap((hour) => {
		const [x, y] = at(hour * 30, radius - 13);
		return [
			stroke(at(hour * 30, radius), at(hour * 30, radius - (hour % 3 === 0 ? 7 : 4)), 'axis'),
			...(hour % 3 === 0 ? [label(x, y + 4, String(hour), {'text-anchor': 'middle', class: 'soft'})] : []),
		];
	});

/** Letters of levers that stand alike are set one outside the other. */
function lever(clockDeg: number, letter: string, index: number): string[] {
	const [x, y] = at(clockDeg, radius + 12 + (index % 2) * 8);
	return [
		stroke([middleX, middleY], at(clockDeg, radius - 2), 'wanted'),
		label(x, y + 4, letter, {'text-anchor': 'middle'}),
	];
}

/** Degrees as the time that an hour hand there would show. */
function clockTime(deg: number): string {
	const minutes = Math.round((((deg % 360) + 360) % 360) * 2) % 720;
	return `${Math.floor(minutes / 60) || 12}:${String(minutes % 60).padStart(2, '0')}`;
}
