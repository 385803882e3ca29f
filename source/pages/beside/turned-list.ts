import type {Option} from '../../procedure/step.js';
import {words} from '../../words/index.js';
import {line} from '../shown-lines.js';
import {type FaceRoom, go, type Offer, type Stop, type Turn, warnings} from './page.js';

type Span = {readonly first: number; readonly last: number; readonly total: number; readonly hasKeys: boolean};

type TurnedList<P> = {
	readonly title: string;
	readonly room: FaceRoom;
	/** The place of the first row among all. */
	readonly offset: number;
	readonly total: number;
	/** What is said over the list. */
	readonly told: string | ((span: Span) => string);
	readonly notices: readonly string[];
	/** What stands under the rows on every page. */
	readonly offers: readonly Offer<P>[];
	readonly rows: readonly Option[];
	/** How the next page is called where no key turns the list. */
	readonly older: string;
	readonly turnTo: (offset: number) => P;
	/** @param id of a row */
	readonly choose: (id: string) => Turn<P>;
	readonly back: Turn<P>;
};

/** A list too long for a screen: keys turn it, or an option does. */
export function turnedList<P>(list: TurnedList<P>): Stop<P> {
	const {title, room, offset, total, told, notices, offers, rows, older, turnTo, choose, back} = list;
	const {listRows, hasKeys} = room;
	const last = Math.min(total, offset + listRows);
	const said = typeof told === 'string' ? told : told({first: offset + 1, last, total, hasKeys});
	const turned = (by: number) => {
		const to = offset + by;
		return go(turnTo(to >= 0 && to < total ? to : offset));
	};
	const under = offers.flatMap(([id, label]) => (label === undefined ? [] : [{id, label}]));
	const behind = [...(last < total ? [{id: 'older', label: older}] : []), {id: 'back', label: words.beside.back}];
	return {
		page: {
			title,
			shown: [line(said), ...warnings(notices)],
			prompt: {kind: 'choice', options: [...rows, ...under, ...(hasKeys ? [] : behind)]},
			turns: hasKeys,
		},
		turn: (entry) => {
			const offer = offers.find(([id]) => id === entry);
			if (offer) return offer[2]();
			if (entry === 'back') return back;
			if (entry === 'older') return turned(listRows);
			if (entry === 'newer') return turned(-listRows);
			return choose(entry);
		},
		back,
	};
}
