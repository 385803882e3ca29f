import {KEYS} from '../../source/terminal/keys.js';

/** Keys by the names used in tests. */
export const KEY_NAMES = {
	enter: KEYS.enter,
	esc: KEYS.escape,
	tab: KEYS.tab,
	backspace: KEYS.backspace,
	up: KEYS.up,
	down: KEYS.down,
	left: KEYS.left,
	right: KEYS.right,
	home: KEYS.home,
	end: KEYS.end,
	pageUp: KEYS.pageUp,
	pageDown: KEYS.pageDown,
	space: ' ',
	'ctrl+c': KEYS.interrupt,
	'ctrl+u': KEYS.clear,
} as const;
export type KeyName = keyof typeof KEY_NAMES;
