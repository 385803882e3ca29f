import {PracticeWorkbench} from '../../../source/desk/practice-workbench.js';
import {lobbyPages} from '../../../source/pages/beside/practice-lobby.js';
import {usualSettings} from '../../../source/procedure/settings.js';
import {KeysProvider} from '../../../source/screens/keys-context.js';
import {LookProvider} from '../../../source/screens/look.js';
import {PagesScreen} from '../../../source/screens/pages-screen.js';
import {App} from '../../../source/screens/show-app.js';
import {readyPracticeFolder} from '../../../source/store/practice-folder.js';
import {KEYS} from '../../../source/terminal/keys.js';
import {memoryWorkbench} from '../../helpers/memory-workbench.js';
import {type AtPractice, begun, goneOn, goneToReading, type Habits} from '../../helpers/practised.js';
import {freshFolder} from '../../helpers/program-environment.js';
import type {Scene} from './terminal.js';

/** Practice: its lobby, the invented bench beside the steps, and the hidden truth. */
export function practiceScenes(): readonly Scene[] {
	return [
		lobby('practice-lobby', {at: 'arms'}),
		lobby('practice-extent', {at: 'extent', arm: 'sticky-bearing'}),
		bench('practice-level', () => goneOn(begun({arm: 'tilted-deck', seed: 1, isPrepared: false}), {}, 'level-lr-1')),
		bench('practice-guard', () => goneOn(begun({arm: 'tilted-deck', seed: 1, isPrepared: false}), {}, 'guard-on')),
		bench('practice-force', () => goneOn(begun({arm: 'tilted-deck', seed: 1, isPrepared: false}), {}, 'force-reading')),
		bench('practice-probe', atFirstReading, {waitMs: 3000}),
		bench('practice-probe-nudged', atFirstReading, {keys: [KEYS.left, KEYS.left], waitMs: 300}),
		bench('practice-probe-held', atFirstReading, {keys: [KEYS.left], waitMs: 7000}),
		bench('practice-probe-half-round', () =>
			goneToReading(sticky(), 'probe-inner', {index: 0, which: 'outerLimit'}, habits),
		),
		bench('practice-verdict', () => goneOn(sticky(), {}, 'verdict')),
		bench('practice-truth', () => goneOn(sticky(), {}, 'verdict'), {keys: ['!']}),
	];
}

const habits: Habits = {};
const sticky = (): AtPractice => begun({arm: 'sticky-bearing', seed: 1, isPrepared: true, roundsEach: 1});
const atFirstReading = (): AtPractice => goneOn(sticky(), {}, 'probe-inner');

/** A bench keeps what is done to it, so each picture has one of its own. */
const bench = (name: string, start: () => AtPractice, more: Partial<Scene> = {}): Scene => ({
	name,
	show: ({feed, look}) => {
		const {bench: practice, dialogue, now} = start();
		const workbench = {...memoryWorkbench({}, now), practice};
		return <App workbench={workbench} dialogue={dialogue} keys={feed} look={look} />;
	},
	...more,
});

const lobby = (name: string, place: {readonly at: 'arms'} | {readonly at: 'extent'; readonly arm?: string}): Scene => ({
	name,
	show: ({feed, look}) => {
		const dataDir = readyPracticeFolder(freshFolder(), 'invented');
		const desk = new PracticeWorkbench({dataDir, version: '0.0.0', settings: usualSettings, seed: () => 7});
		return (
			<LookProvider value={look}>
				<KeysProvider value={feed}>
					<PagesScreen
						workbench={desk}
						pages={{...lobbyPages(desk, true), start: place}}
						onElsewhere={async () => undefined}
						onLeave={() => {}}
					/>
				</KeysProvider>
			</LookProvider>
		);
	},
});
