import limits from '../../shared/limits.json' with {type: 'json'};
import {type Language, languageCodes} from '../language.js';
import type {UnitId} from '../units.js';
import type {VerdictLimits} from './facts.js';

/** Limits of the verdict, how rounds are taken, and the settle countdown. Limits hold for checks that start afterwards. */
export type Settings = VerdictLimits & {
	/** Arm and gauge are set up anew for each round; holds for checks that start afterwards. */
	readonly setAnew: boolean;
	readonly settleSeconds: number;
	/** Ring the terminal's bell at the end of the settle countdown. */
	readonly bell: boolean;
	/** For those who know the way: a list is ticked with one key, and steps are asked in short words. */
	readonly brisk: boolean;
	/** Name of the shop, on the sheet for the customer; empty for none, and then no customer is asked about. */
	readonly shop: string;
	/** The language to speak from the next start; empty for the one of the system. */
	readonly language: Language | '';
};

/** What is set by a number, in the order in which it is shown. */
export const settingItems = [
	{id: 'pullGoodPct', unit: 'percent', between: [0.1, 50], whole: false},
	{id: 'pullUsablePct', unit: 'percent', between: [0.1, 50], whole: false},
	{id: 'bandGoodPct', unit: 'percent', between: [0.1, 50], whole: false},
	{id: 'bandUsablePct', unit: 'percent', between: [0.1, 50], whole: false},
	{id: 'settleSeconds', unit: 's', between: [1, 60], whole: true},
] as const satisfies readonly {
	id: Exclude<keyof Settings, SwitchId | TextId | 'language'>;
	unit: UnitId;
	between: readonly [number, number];
	whole: boolean;
}[];

export type SettingId = (typeof settingItems)[number]['id'];

/** What is on or off, in the order in which it is shown. */
export const switchIds = ['setAnew', 'bell', 'brisk'] as const satisfies readonly (keyof Settings)[];

export type SwitchId = (typeof switchIds)[number];

/** What is set in words, in the order in which it is shown. */
export const textIds = ['shop'] as const satisfies readonly (keyof Settings)[];

export type TextId = (typeof textIds)[number];

export const usualSettings: Settings = {
	pullGoodPct: limits.pullGoodPct.value,
	pullUsablePct: limits.pullUsablePct.value,
	bandGoodPct: limits.bandGoodPct.value,
	bandUsablePct: limits.bandUsablePct.value,
	settleSeconds: limits.settleSeconds.value,
	setAnew: true,
	bell: true,
	brisk: false,
	shop: '',
	language: '',
};

/** What the language may be set to, in the order in which it is shown. */
export const languageChoices = ['', ...languageCodes] as const;

/** The limits that a check starts with. */
export const limitsOf = ({pullGoodPct, pullUsablePct, bandGoodPct, bandUsablePct}: Settings): VerdictLimits => ({
	pullGoodPct,
	pullUsablePct,
	bandGoodPct,
	bandUsablePct,
});

export type SettingsFault = 'pull-good-above-usable' | 'band-good-above-usable';

/** Why settings cannot be taken together. */
export function settingsFault(settings: Settings): SettingsFault | undefined {
	if (settings.pullGoodPct > settings.pullUsablePct) return 'pull-good-above-usable';
	return settings.bandGoodPct > settings.bandUsablePct ? 'band-good-above-usable' : undefined;
}
