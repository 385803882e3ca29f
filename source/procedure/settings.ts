import limits from '../../shared/limits.json' with {type: 'json'};
import type {UnitId} from '../units.js';
import type {Limits} from './facts.js';

/** Limits of the verdict, how rounds are taken, and the settle countdown. Limits hold for checks that start afterwards. */
export type Settings = Limits & {
	/** Arm and gauge are set up anew for each round; holds for checks that start afterwards. */
	readonly setAnew: boolean;
	readonly settleSeconds: number;
	/** Ring the terminal's bell at the end of the settle countdown. */
	readonly bell: boolean;
};

/** What is set by a number, in the order in which it is shown. */
export const settingItems = [
	{id: 'pullGoodPct', label: 'pull: good to', unit: 'percent', between: [0.1, 50], whole: false},
	{id: 'pullUsablePct', label: 'pull: usable to', unit: 'percent', between: [0.1, 50], whole: false},
	{id: 'bandGoodPct', label: 'hold band: good to', unit: 'percent', between: [0.1, 50], whole: false},
	{id: 'bandUsablePct', label: 'hold band: usable to', unit: 'percent', between: [0.1, 50], whole: false},
	{id: 'settleSeconds', label: 'settle countdown', unit: 's', between: [1, 60], whole: true},
] as const satisfies readonly {
	id: Exclude<keyof Settings, SwitchId>;
	label: string;
	unit: UnitId;
	between: readonly [number, number];
	whole: boolean;
}[];

export type SettingId = (typeof settingItems)[number]['id'];

/** What is on or off, in the order in which it is shown. */
export const switchItems = [
	{id: 'setAnew', label: 'gauge set anew for each round'},
	{id: 'bell', label: 'bell at the end of the countdown'},
] as const satisfies readonly {id: SwitchId; label: string}[];

export type SwitchId = 'setAnew' | 'bell';

export const usualSettings: Settings = {
	pullGoodPct: limits.pullGoodPct.value,
	pullUsablePct: limits.pullUsablePct.value,
	bandGoodPct: limits.bandGoodPct.value,
	bandUsablePct: limits.bandUsablePct.value,
	settleSeconds: limits.settleSeconds.value,
	setAnew: true,
	bell: true,
};

/** The limits that a check starts with. */
export const limitsOf = ({pullGoodPct, pullUsablePct, bandGoodPct, bandUsablePct}: Settings): Limits => ({
	pullGoodPct,
	pullUsablePct,
	bandGoodPct,
	bandUsablePct,
});

/** Why settings cannot be taken together, in one sentence. */
export function settingsFault(settings: Settings): string | undefined {
	if (settings.pullGoodPct > settings.pullUsablePct) return "The pull's good limit must not be above its usable limit.";
	if (settings.bandGoodPct > settings.bandUsablePct)
		return "The hold band's good limit must not be above its usable limit.";
	return;
}
