import {type ReactNode, useRef, useState} from 'react';
import {KEYS} from '../terminal/keys.js';
import {words} from '../words/index.js';
import {footRows, pageRow, type Row, rowsOf, textRows} from './body.js';
import {Frame} from './frame.js';
import {Choice} from './inputs/choice.js';
import {linesOfOptions} from './option-pages.js';
import {pageOf} from './pages.js';
import {type PageProps, usePage} from './use-page.js';

/** Told of what was typed on a list that is none of its lines. */
export type Misfits = {readonly onMisfit: (typed: string) => void};

const blank: Row = {text: '', tone: 'plain'};

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
	const body = rowsOf(shown, width, look);
	const foot = footRows([hints.choose, escapes[esc], hints.leave], width, look);
	const head = textRows(title, width, look, 'strong');
	const free = frameRows - head.length - 1 - foot.length;
	const wanted = linesOfOptions(options, width);
	const list = Math.max(1, Math.min(wanted, free - Math.min(body.length, Math.max(6, free - wanted))));
	const room = free - list - (body.length > 0 ? 1 : 0);
	const turned = body.length <= room ? {rows: body, page: 0, pages: 1} : pageOf(body, page, room - 1);
	pages.current = turned.pages;
	const note = turned.pages > 1 ? [pageRow({page: turned.page + 1, of: turned.pages, byArrows: !turns}, look)] : [];
	const gap = body.length > 0 ? [blank] : [];
	return (
		<Frame head={head} body={[...turned.rows, ...note, ...gap]} foot={[blank, ...foot]}>
			{options.length > 0 ? (
				<Choice options={options} rows={list} width={width} onChoose={onEntry} onMisfit={onMisfit} />
			) : null}
		</Frame>
	);
};
