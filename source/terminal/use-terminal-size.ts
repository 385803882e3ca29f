import {useStdout} from 'ink';
import {useCallback, useSyncExternalStore} from 'react';

/** Below this no screen is readable; the caller asks for a larger window instead. */
export const MIN_COLUMNS = 40;
export const MIN_ROWS = 20;

// Both in one number, so that React can tell by comparison whether anything changed.
const ROWS_BASE = 65_536;

/** The size of the terminal, followed as it changes; 80 x 24 where it is not known. */
export const useTerminalSize = () => {
	const {stdout} = useStdout();
	const subscribe = useCallback(
		(changed: () => void) => {
			stdout.on('resize', changed);
			return () => {
				stdout.off('resize', changed);
			};
		},
		[stdout],
	);
	const packed = useSyncExternalStore(subscribe, () => (stdout.columns || 80) * ROWS_BASE + (stdout.rows || 24));
	const columns = Math.floor(packed / ROWS_BASE);
	const rows = packed % ROWS_BASE;
	/** Lines that a frame may have: as tall as the terminal it would make Ink clear everything at each key. */
	const frameRows = rows - 1;
	return {columns, rows, frameRows, isTooSmall: columns < MIN_COLUMNS || rows < MIN_ROWS};
};
