import type {BesidePage, PagePrompt} from '../pages/beside/page.js';
import {KEYS} from '../terminal/keys.js';
import {useTerminalSize} from '../terminal/use-terminal-size.js';
import {useCommands} from './keys-context.js';
import {useLook} from './look.js';

/** A page, and what it is asked with. */
export type PageProps<Kind extends PagePrompt['kind']> = {
	readonly page: BesidePage;
	readonly prompt: Extract<PagePrompt, {readonly kind: Kind}>;
	/** The id of an option, `yes` or `no`, or what was typed. */
	readonly onEntry: (entry: string) => void;
	readonly onBack: () => void;
};

type PageKeys = {
	readonly onBack: () => void;
	/** @returns whether it took the key */
	readonly onKey?: (key: string) => boolean;
	readonly onClear?: () => void;
};

/** What every page outside a check has: its room, and a key that leads back. */
export function usePage({onBack, onKey, onClear}: PageKeys) {
	const {columns, frameRows, isTooSmall} = useTerminalSize();
	useCommands((key) => {
		if (isTooSmall) return true;
		if (key !== KEYS.escape) return onKey?.(key) ?? false;
		onBack();
		return true;
	}, onClear);
	return {look: useLook(), width: Math.min(columns, 100), frameRows};
}
