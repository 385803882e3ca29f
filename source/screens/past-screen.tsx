import {type ReactNode, useMemo, useState} from 'react';
import {pastHeading, pastLabels} from '../pages/past.js';
import {pastPages} from '../pages/past-pages.js';
import {line} from '../pages/shown-lines.js';
import {useTerminalSize} from '../terminal/use-terminal-size.js';
import type {Workbench} from '../workbench.js';
import {MenuScreen} from './menu-screen.js';
import {PagesScreen} from './pages-screen.js';

type PastScreenProps = {
	readonly workbench: Workbench;
	readonly onBack: () => void;
	readonly onReopen: (id: string) => void;
};

/** Past checks, newest first, a page at a time; one of them opened whole. */
export const PastScreen = ({workbench, onBack, onReopen}: PastScreenProps): ReactNode => {
	const {frameRows, columns} = useTerminalSize();
	const [offset, setOffset] = useState(0);
	const [open, setOpen] = useState<string>();
	const size = Math.max(1, Math.min(9, frameRows - 8));
	if (open !== undefined)
		return (
			<OneCheck key={open} workbench={workbench} id={open} onBack={() => setOpen(undefined)} onReopen={onReopen} />
		);
	const {total, rows, notices} = workbench.archive.past({offset, limit: size});
	const labels = pastLabels(rows, columns);
	const shownTo = Math.min(total, offset + size);
	return (
		<MenuScreen
			key={offset}
			title="Past checks"
			shown={[
				line(
					total === 0
						? 'No check is on file yet.'
						: `${offset + 1} to ${shownTo} of ${total}; left and right for newer and older. ${pastHeading}`,
				),
				...notices.map((text) => line(text, 'warn')),
			]}
			options={rows.map(({id}, index) => ({id, label: labels[index] ?? id}))}
			onChoose={setOpen}
			onPage={(by) => setOffset((now) => (now + by * size >= 0 && now + by * size < total ? now + by * size : now))}
			onBack={onBack}
			backHint="Esc back"
		/>
	);
};

const OneCheck = ({workbench, id, onBack, onReopen}: PastScreenProps & {readonly id: string}): ReactNode => {
	const pages = useMemo(() => pastPages(workbench, id), [workbench, id]);
	return <PagesScreen pages={pages} onOut={(reopen) => (reopen === undefined ? onBack() : onReopen(reopen))} />;
};
