import limits from '../../shared/limits.json' with {type: 'json'};
import type {UnitId} from '../units.js';

/** What can be set in the settings, in the order in which it is shown. Limits hold for checks that start afterwards. */
export const settingItems = [
	{id: 'pullGoodPct', label: 'pull: good up to', unit: 'percent', usual: limits.pullGoodPct.value, between: [0.1, 50]},
	{
		id: 'pullUsablePct',
		label: 'pull: usable up to',
		unit: 'percent',
		usual: limits.pullUsablePct.value,
		between: [0.1, 50],
	},
	{
		id: 'bandGoodPct',
		label: 'hold band: good up to',
		unit: 'percent',
		usual: limits.bandGoodPct.value,
		between: [0.1, 50],
	},
	{
		id: 'bandUsablePct',
		label: 'hold band: usable up to',
		unit: 'percent',
		usual: limits.bandUsablePct.value,
		between: [0.1, 50],
	},
	{id: 'settleSeconds', label: 'settle countdown', unit: 's', usual: 5, between: [1, 60]},
] as const satisfies readonly {
	id: string;
	label: string;
	unit: UnitId;
	usual: number;
	between: readonly [number, number];
}[];

export type SettingId = (typeof settingItems)[number]['id'];
export type Settings = {readonly [Id in SettingId]: number} & {
	/** Ring the terminal's bell at the end of the settle countdown. */
	readonly bell: boolean;
};

export const usualSettings: Settings = {
	pullGoodPct: limits.pullGoodPct.value,
	pullUsablePct: limits.pullUsablePct.value,
	bandGoodPct: limits.bandGoodPct.value,
	bandUsablePct: limits.bandUsablePct.value,
	settleSeconds: 5,
	bell: true,
};

/** Why settings cannot be taken together, in one sentence. */
export function settingsFault(settings: Settings): string | undefined {
	if (settings.pullGoodPct > settings.pullUsablePct) return "The pull's good limit must not be above its usable limit.";
	if (settings.bandGoodPct > settings.bandUsablePct)
		return "The hold band's good limit must not be above its usable limit.";
	return;
}
