import {besidePages} from '../../../source/pages/beside/beside-pages.js';
import type {BesidePlace} from '../../../source/pages/beside/places.js';
import {profilesWith} from '../../../source/results/profiles.js';
import {KeysProvider} from '../../../source/screens/keys-context.js';
import {LookProvider} from '../../../source/screens/look.js';
import {PagesScreen} from '../../../source/screens/pages-screen.js';
import {App} from '../../../source/screens/show-app.js';
import {KEYS} from '../../../source/terminal/keys.js';
import {filed} from '../../helpers/filed-checks.js';
import {driftingArm, fullStory, played, playedInTurn} from '../../helpers/invented-checks.js';
import {memoryWorkbench} from '../../helpers/memory-workbench.js';
import {northDeck} from '../../helpers/sample-check.js';
import {clockFrom, follow, freshDialogue} from '../../helpers/script.js';
import {soundArm} from './check-scenes.js';
import type {Scene} from './terminal.js';

type Memory = Parameters<typeof memoryWorkbench>[0];

const today = '2026-11-20T09:00:00Z';

/** What stands beside checks: home, past checks over the years, profiles and settings. */
export function besideScenes(): readonly Scene[] {
	const story = playedInTurn([...driftingArm, fullStory]).map(({record}) => record);
	const sound = played({at: '2026-09-05T10:00:00+02:00', script: soundArm});
	const cutShort = played({at: '2026-11-18T17:20:00+01:00', script: northDeck, leftAt: 'back-mat'});
	const many = Array.from({length: 14}, (_none, nth) =>
		filed({at: `2026-0${1 + (nth % 9)}-1${nth % 10}T10:00:00Z`, arm: `deck ${nth + 1}`, next: dueAt(nth)}),
	);
	const draft = follow(freshDialogue([], 'sample-2'), northDeck, {until: 'guard-gap'}).check;
	const [first] = story;
	const last = story.at(-1);
	if (!first || !last) throw new Error('The story has checks.');
	const profiles = profilesWith(profilesWith([], first.check, '2025-03-01T09:00:00Z'), sound.check, today);
	const [armProfile] = profiles;
	if (!armProfile) throw new Error('A check leaves a profile of its arm.');
	const memory = {records: [...many, ...story, sound, cutShort], profiles};

	const page = (name: string, place: BesidePlace, more: Partial<Scene> = {}, kept: Memory = memory): Scene => ({
		name,
		show: ({feed, look, size}) => {
			const workbench = memoryWorkbench(kept, clockFrom(today));
			const room = {listRows: Math.max(1, Math.min(9, size.rows - 9)), columns: size.columns, hasKeys: true};
			return (
				<LookProvider value={look}>
					<KeysProvider value={feed}>
						<PagesScreen
							workbench={workbench}
							pages={{...besidePages(workbench, room), start: place}}
							onElsewhere={async () => undefined}
							onLeave={() => {}}
						/>
					</KeysProvider>
				</LookProvider>
			);
		},
		...more,
	});
	const home = (name: string, kept: Memory, notice?: string): Scene => ({
		name,
		show: ({feed, look}) => (
			<App workbench={memoryWorkbench(kept, clockFrom(today))} notice={notice} keys={feed} look={look} />
		),
	});
	const unfinished = memoryWorkbench({...memory, draft}, clockFrom(today)).unfinished();
	if (!unfinished) throw new Error('The draft is unfinished.');
	const past = (id: string) => ({id, offset: 0});
	const armAnswer = Object.keys(armProfile.answers).find((step) => step === 'arm-length') ?? '';
	return [
		home('home-first-day', {}),
		home('home-next-due', memory),
		home('home-unfinished', {...memory, draft}),
		page('home-check-open', {at: 'check-open', unfinished, other: 'start'}),
		page('filed-ready', {at: 'filed', record: last}),
		page('filed-sound', {at: 'filed', record: sound}),
		page('filed-not-ready', {at: 'filed', record: cutShort}),
		page('past-none', {at: 'past', offset: 0}, {}, {}),
		page('past-list', {at: 'past', offset: 0}),
		page('past-check', {at: 'past-check', ...past(last.check.id)}),
		page('past-check-not-put-back', {at: 'past-check', ...past(cutShort.check.id)}),
		page('past-void-reason', {at: 'void-reason', ...past(first.check.id)}),
		page('past-void-typed', {at: 'void-typed', ...past(first.check.id)}, {keys: ['wrong stylus']}),
		page('past-void-confirm', {at: 'void-confirm', ...past(first.check.id), reason: 'wrong stylus'}),
		page('profiles-list', {at: 'profiles'}),
		page('profile', {at: 'profile', id: armProfile.id}),
		page('profile-rename', {at: 'rename', id: armProfile.id}, {keys: ['north deck, left']}),
		page('profile-answers', {at: 'answers', id: armProfile.id}),
		page('profile-answer', {at: 'answer', id: armProfile.id, step: armAnswer}),
		page('profile-answer-refused', {at: 'answer', id: armProfile.id, step: armAnswer}, {keys: ['2', KEYS.enter]}),
		page('settings', {at: 'settings'}),
		page('setting-number', {at: 'setting', item: settingShown}),
		page('setting-refused', {at: 'setting', item: settingShown}, {keys: ['500', KEYS.enter]}),
	];
}

const settingShown = {id: 'pullGoodPct', unit: 'percent', between: [0.1, 50], whole: false} as const;

const dueAt = (nth: number) => ({date: `2026-12-0${1 + (nth % 9)}`, because: 'six months'});
