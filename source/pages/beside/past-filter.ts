import {armMeant} from '../../results/years/arms-named.js';
import {cameTo, isFiltered, type PastFilter} from '../../results/years/past-filter.js';
import {words} from '../../words/index.js';
import type {Workbench} from '../../workbench.js';
import {line} from '../shown-lines.js';
import {backOffer, fieldStop, go, listStop, type Offer, type Stop} from './page.js';
import type {BesidePlace, PastListPlace} from './places.js';

const say = words.beside.past.filter;

type FilterPlace = PastListPlace & {readonly at: Exclude<PastListPlace['at'], 'past'>};

/** Which past checks are wanted: of an arm, of a year, of a verdict. */
export function pastFilterAt({archive}: Workbench, {at, offset, only = {}}: FilterPlace): Stop<BesidePlace> {
	const toFilter = go({at: 'past-filter', offset, only} as const);
	const wanted = (filter: PastFilter) =>
		go({at: 'past', offset: 0, ...(isFiltered(filter) && {only: filter})} as const);
	const {title} = say;
	switch (at) {
		case 'past-filter': {
			const told = toldFilter(only);
			const to = (where: FilterPlace['at']) => () => go({at: where, offset, only} as const);
			return listStop<BesidePlace>({title, shown: [line(say.now(told))]}, wanted(only), [
				['arm', say.byArm, to('filter-arm')],
				['year', say.byYear, to('filter-year')],
				['verdict', say.byVerdict, to('filter-verdict')],
				['all', isFiltered(only) ? say.all : undefined, () => wanted({})],
				backOffer(wanted(only)),
			]);
		}
		case 'filter-arm': {
			const arms = archive.arms();
			const turn = (typed: string) => {
				const part = typed.trim();
				const {armNames: _any, ...others} = only;
				if (part === '') return wanted(others);
				const meant = armMeant(part, arms);
				if (meant.found === 'none')
					return {kind: 'refused', sentence: words.beside.arms.noneWith({typed: part})} as const;
				const names = meant.found === 'one' ? [meant.arm] : meant.arms;
				const armNames = arms
					.filter(({name}) => names.includes(name))
					.flatMap(({name, formerNames}) => [name, ...formerNames]);
				return wanted({...only, armNames});
			};
			return fieldStop<BesidePlace>({title, shown: [line(say.typePart, 'strong')]}, toFilter, turn, {mayBeEmpty: true});
		}
		case 'filter-year': {
			const years = new Set(
				archive.past({offset: 0, limit: Number.POSITIVE_INFINITY}).rows.map(({date}) => date.slice(0, 4)),
			);
			return listStop<BesidePlace>({title, shown: [line(say.whichYear, 'strong')]}, toFilter, [
				...[...years].map((year): Offer<BesidePlace> => [year, year, () => wanted({...only, year})]),
				backOffer(toFilter),
			]);
		}
		case 'filter-verdict': {
			const kinds = new Set(archive.past({offset: 0, limit: Number.POSITIVE_INFINITY}).rows.map(cameTo));
			return listStop<BesidePlace>({title, shown: [line(say.whichVerdict, 'strong')]}, toFilter, [
				...[...kinds].map(
					(verdict): Offer<BesidePlace> => [verdict, say.verdict({verdict}), () => wanted({...only, verdict})],
				),
				backOffer(toFilter),
			]);
		}
	}
}

/** What is wanted, for a sentence: an arm by its name of today. */
export const toldFilter = ({armNames, year, verdict}: PastFilter = {}) => ({
	arm: armNames?.[0],
	year,
	verdict,
});
