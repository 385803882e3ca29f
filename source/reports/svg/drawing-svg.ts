import type {Drawing} from '../report.js';
import {bandsSvg} from './bands-svg.js';
import {curveSvg} from './curve-svg.js';
import {historySvg} from './history-svg.js';
import {leverSvg} from './lever-svg.js';
import type {Told} from './picture.js';

/** Any drawing as a picture; its caption becomes the picture's description. */
export function drawingSvg(drawing: Drawing, {id, title}: Omit<Told, 'description'>): string {
	const told = {id, title, description: drawing.caption};
	switch (drawing.kind) {
		case 'bands':
			return bandsSvg(drawing, told);
		case 'curve':
			return curveSvg(drawing, told);
		case 'history':
			return historySvg(drawing, told);
		case 'lever':
			return leverSvg(drawing, told);
	}
}
