import {type ReactNode, useRef, useState} from 'react';
import {KEYS} from '../terminal/keys.js';
import {words} from '../words/index.js';
import {rowsOf} from './arrange.js';
import {footRows} from './body.js';
import {Frame} from './frame.js';
import {Choice} from './inputs/choice.js';
import {linesOfOptions} from './option-pages.js';
import {answerRows, headOfPage, pageOfBody, skeletonOf} from './skeleton.js';
import {type PageProps, usePage} from './use-page.js';

/** Lines that a long list leaves to what stands over it. */
const leastBody = 6;

/** Told of what was typed on a list that is none of its lines. */
export type Misfits = {readonly onMisfit: (typed: string) => void};

/**
 * A list to choose from, with what is to be said above it. Too much text is turned page by page: by arrows, or by PgUp and
 * PgDn where the arrows turn the list itself.
 */
export const MenuScreen = ({
	page: {title, shown, esc = 'back', turns = false},
	prompt: {options},
	onEntry,
	onBack,
	onMisfit,
}: PageProps<'choice'> & Misfits): ReactNode => {
	const [page, setPage] = useState(0);
	const pages = useRef(1);
	const onKey = (key: string): boolean => {
		const isArrow = key === KEYS.right || key === KEYS.left;
		if (!isArrow && key !== KEYS.pageDown && key !== KEYS.pageUp) return false;
		const by = key === KEYS.right || key === KEYS.pageDown ? 1 : -1;
		if (turns && isArrow) onEntry(by > 0 ? 'older' : 'newer');
		else setPage((now) => Math.min(pages.current - 1, Math.max(0, now + by)));
		return true;
	};
	const {look, width, frameRows} = usePage({onBack, onKey});
	const {hints, escapes} = words.faces;
	const parts = {
		...headOfPage(title, width, look),
		width,
		height: frameRows,
		look,
		keys: footRows([hints.choose, escapes[esc], hints.leave], width, look),
	};
	const free = skeletonOf({...parts, answer: answerRows}).room + answerRows;
	const wanted = linesOfOptions(options, width);
	// Pictures are made for the lines that the list leaves, so that none is cut by the end of a page.
	const body = rowsOf(shown, width, look, Math.max(leastBody, free - wanted));
	const list = Math.max(1, Math.min(wanted, free - Math.min(body.length, Math.max(leastBody, free - wanted))));
	const {head, room, filled, foot} = skeletonOf({...parts, answer: options.length > 0 ? list : 0});
	const turned = pageOfBody(body, page, {room, byArrows: !turns}, look);
	pages.current = turned.pages;
	return (
		<Frame head={head} body={filled(turned.rows, turned.note)} foot={foot}>
			{options.length > 0 ? (
				<Choice options={options} rows={list} width={width} onChoose={onEntry} onMisfit={onMisfit} />
			) : null}
		</Frame>
	);
};
