import {besidePages} from '../../source/pages/beside/beside-pages.js';
import type {BesidePlace} from '../../source/pages/beside/places.js';
import {KeysProvider} from '../../source/screens/keys-context.js';
import {PagesScreen} from '../../source/screens/pages-screen.js';
import {type InkOptions, renderInk} from './ink.js';
import {memoryWorkbench} from './memory-workbench.js';

/** The full screens beside a check, from one of them on. */
export function showBeside(
	start: BesidePlace,
	memory: Parameters<typeof memoryWorkbench>[0] = {},
	options: InkOptions = {},
) {
	const workbench = memoryWorkbench(memory);
	const pages = {...besidePages(workbench, {listRows: 9, columns: options.columns ?? 80, hasKeys: true}), start};
	const screen = renderInk(
		(feed) => (
			<KeysProvider value={feed}>
				<PagesScreen workbench={workbench} pages={pages} onElsewhere={async () => undefined} onLeave={() => {}} />
			</KeysProvider>
		),
		options,
	);
	return {...screen, workbench, memory: workbench.memory};
}
