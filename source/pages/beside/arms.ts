import type {ArmState} from '../../results/years/arm-states.js';
import {armMeant} from '../../results/years/arms-named.js';
import {words} from '../../words/index.js';
import type {Workbench} from '../../workbench.js';
import {line} from '../shown-lines.js';
import {armStop} from './arm.js';
import {type FaceRoom, fieldStop, go, type Offer, type Stop} from './page.js';
import {type ArmPlace, type BesidePlace, toHome} from './places.js';
import {turnedList} from './turned-list.js';

const say = words.beside.arms;
const toFind = go({at: 'find-arm'} as const);

/** Arms: found by a part of their name, in a list, or one with all that is on file of it. */
export function armsAt(workbench: Workbench, room: FaceRoom, place: ArmPlace): Stop<BesidePlace> {
	switch (place.at) {
		case 'find-arm':
			return findStop(workbench);
		case 'arms':
			return listOf(workbench, room, place);
		case 'arm': {
			const arms = workbench.archive.arms();
			const state = arms.find(({name}) => name === place.arm);
			return armStop(workbench, state, place, toArms(arms.length, room));
		}
	}
}

/** Where the way to an arm begins: few stand in a list at once, of many one is found by its name. */
export const toArms = (arms: number, {listRows}: FaceRoom) =>
	arms > listRows ? toFind : go({at: 'arms', offset: 0} as const);

/** Enough to be seen at a glance. */
const mostDue = 5;

function findStop({archive}: Workbench): Stop<BesidePlace> {
	const arms = archive.arms();
	const due = arms.filter((one) => isDue(one)).slice(0, mostDue);
	const shown = [
		line(say.typePart, 'strong'),
		...(due.length === 0 ? [] : [line(say.dueFirst), ...due.map((one) => line(`${one.name}: ${standsAs(one)}`))]),
	];
	const turn = (typed: string) => {
		const part = typed.trim();
		if (part === '') return go({at: 'arms', offset: 0} as const);
		const meant = armMeant(part, arms);
		if (meant.found === 'none') return {kind: 'refused', sentence: say.noneWith({typed: part})} as const;
		return meant.found === 'one'
			? go({at: 'arm', arm: meant.arm} as const)
			: go({at: 'arms', offset: 0, part} as const);
	};
	return fieldStop<BesidePlace>({title: say.findTitle, shown}, toHome, turn, {mayBeEmpty: true});
}

function listOf(workbench: Workbench, room: FaceRoom, place: Extract<ArmPlace, {at: 'arms'}>): Stop<BesidePlace> {
	const {offset, part} = place;
	const all = workbench.archive.arms();
	const meant = part === undefined ? undefined : armMeant(part, all);
	const arms = meant?.found === 'several' ? all.filter(({name}) => meant.arms.includes(name)) : all;
	const find: Offer<BesidePlace>[] = all.length > room.listRows ? [['find', say.find, () => toFind]] : [];
	const listRows = room.hasKeys ? Math.max(1, room.listRows - find.length) : room.listRows;
	const rows = arms.slice(offset, offset + listRows);
	const widest = Math.max(0, ...rows.map(({name}) => name.length));
	const isWide = room.columns >= 60;
	return turnedList({
		title: say.title,
		room: {...room, listRows},
		offset,
		total: arms.length,
		told: arms.length === 0 ? say.none : (span) => say.span({...span, part}),
		notices: [],
		offers: find,
		rows: rows.map((one) => ({
			id: `${armOption}${one.name}`,
			label: isWide ? `${one.name.padEnd(Math.min(widest, 30))}  ${standsAs(one)}` : `${one.name}: ${standsAs(one)}`,
		})),
		older: say.more,
		turnTo: (to) => ({...place, offset: to}),
		choose: (id) => go({at: 'arm', arm: id.slice(armOption.length)}),
		back: part === undefined ? toHome : toFind,
	});
}

/** A name may be any word, also that of another option. */
const armOption = 'arm:';

const isDue = ({due}: ArmState): boolean => due !== undefined && due.inDays <= 0;

/** The latest verdict of an arm and when it is due, in a few words. */
function standsAs({last, due, isAside, deckOpenAfter}: ArmState): string {
	if (isAside) return say.aside;
	return say.stands({
		last: last ? say.lastVerdict(last) : say.noVerdictYet,
		due: deckOpenAfter !== undefined ? say.deckOpen : due ? say.due(due) : '',
	});
}
