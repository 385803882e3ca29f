import type {ReactNode} from 'react';
import {useRef, useState} from 'react';
import type {Shown} from '../pages/shown-lines.js';
import type {Option} from '../procedure/step.js';
import {KEYS} from '../terminal/keys.js';
import {useTerminalSize} from '../terminal/use-terminal-size.js';
import {type Row, rowsOf, textRows} from './body.js';
import {Frame} from './frame.js';
import {Choice} from './inputs/choice.js';
import {useCommands} from './keys-context.js';
import {useLook} from './look.js';
import {linesOfOptions} from './option-pages.js';
import {pageOf} from './pages.js';

type MenuScreenProps = {
	readonly title: string;
	readonly shown: readonly Shown[];
	readonly options: readonly Option[];
	readonly onChoose: (id: string) => void;
	readonly onBack: () => void;
	/** Left and right, where the list itself has pages; the text above it is then turned by PgUp and PgDn. */
	readonly onPage?: (by: number) => void;
	readonly backHint: string;
};

/** A list to choose from, with what is to be said above it. Too much text is turned page by page. */
export const MenuScreen = ({title, shown, options, onChoose, onBack, onPage, backHint}: MenuScreenProps): ReactNode => {
	const look = useLook();
	const {columns, frameRows, isTooSmall} = useTerminalSize();
	const width = Math.min(columns, 100);
	const [page, setPage] = useState(0);
	const pages = useRef(1);
	useCommands((key) => {
		if (isTooSmall) return true;
		if (key === KEYS.escape) {
			onBack();
			return true;
		}
		const isArrow = key === KEYS.right || key === KEYS.left;
		if (!isArrow && key !== KEYS.pageDown && key !== KEYS.pageUp) return false;
		const by = key === KEYS.right || key === KEYS.pageDown ? 1 : -1;
		if (onPage && isArrow) onPage(by);
		else setPage((now) => Math.min(pages.current - 1, Math.max(0, now + by)));
		return true;
	});
	const body = rowsOf(shown, width, look);
	const foot: Row[] = textRows(
		`digit or Enter${look.unicode ? ' · ' : ', '}${backHint}${look.unicode ? ' · ' : ', '}Ctrl+C leave`,
		width,
		look,
		'dim',
	);
	const head: Row[] = textRows(title, width, look, 'strong');
	const free = frameRows - head.length - 1 - foot.length;
	const wanted = linesOfOptions(options, width);
	const list = Math.max(1, Math.min(wanted, free - Math.min(body.length, Math.max(6, free - wanted))));
	const room = free - list - (body.length > 0 ? 1 : 0);
	const turned = body.length <= room ? {rows: body, page: 0, pages: 1} : pageOf(body, page, room - 1);
	pages.current = turned.pages;
	const note: Row[] =
		turned.pages > 1
			? [
					{
						text: `page ${turned.page + 1} of ${turned.pages}: ${onPage ? 'PgDn, PgUp' : look.unicode ? '← →' : 'Left, Right'}`,
						tone: 'dim',
					},
				]
			: [];
	const gap: Row[] = body.length > 0 ? [{text: '', tone: 'plain'}] : [];
	return (
		<Frame head={head} body={[...turned.rows, ...note, ...gap]} foot={[{text: '', tone: 'plain'}, ...foot]}>
			{options.length > 0 ? <Choice options={options} rows={list} width={width} onChoose={onChoose} /> : null}
		</Frame>
	);
};
