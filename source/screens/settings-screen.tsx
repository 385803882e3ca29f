import {type ReactNode, useState} from 'react';
import {isSwitch, readSetting, settingOptions} from '../pages/settings-menu.js';
import {line} from '../pages/shown-lines.js';
import type {SettingId, Settings} from '../procedure/settings.js';
import {KEYS} from '../terminal/keys.js';
import {useTerminalSize} from '../terminal/use-terminal-size.js';
import type {Workbench} from '../workbench.js';
import {rowsOf, textRows} from './body.js';
import {Frame} from './frame.js';
import {Field} from './inputs/field.js';
import {useCommands} from './keys-context.js';
import {useLook} from './look.js';
import {MenuScreen} from './menu-screen.js';

type SettingsScreenProps = {readonly workbench: Workbench; readonly onBack: () => void};

/** Limits of the verdict, how rounds are taken, settle countdown and bell. They hold for checks that start afterwards. */
export const SettingsScreen = ({workbench, onBack}: SettingsScreenProps): ReactNode => {
	const [settings, setSettings] = useState(() => workbench.settings());
	const [open, setOpen] = useState<SettingId>();
	const [fault, setFault] = useState('');
	const keep = async (next: Settings): Promise<void> => {
		const saved = await workbench.saveSettings(next);
		setFault(saved.ok ? '' : saved.sentence);
		if (!saved.ok) return;
		setSettings(next);
		setOpen(undefined);
	};
	if (open !== undefined)
		return (
			<OneSetting
				id={open}
				settings={settings}
				fault={fault}
				onBack={() => setOpen(undefined)}
				onKeep={(next) => void keep(next)}
				onFault={setFault}
			/>
		);
	return (
		<MenuScreen
			title="Settings"
			shown={[
				line(
					'Limits are defaults of this program, from memory of trade practice; no published limits were found. They hold for checks that start from now on. A gauge that is not set anew for each round leaves 0.3 % more open in every pull.',
				),
				...(fault === '' ? [] : [line(fault, 'warn')]),
			]}
			options={settingOptions(settings)}
			onChoose={(id) => {
				if (isSwitch(id)) void keep({...settings, [id]: !settings[id]});
				else if (id === 'back') onBack();
				else {
					const found = settingOptions(settings).find((one) => one.id === id);
					if (found && found.id !== 'back' && !isSwitch(found.id)) setOpen(found.id);
				}
			}}
			onBack={onBack}
			backHint="Esc back"
		/>
	);
};

type OneSettingProps = {
	readonly id: SettingId;
	readonly settings: Settings;
	readonly fault: string;
	readonly onBack: () => void;
	readonly onKeep: (settings: Settings) => void;
	readonly onFault: (fault: string) => void;
};

const OneSetting = ({id, settings, fault, onBack, onKeep, onFault}: OneSettingProps): ReactNode => {
	const look = useLook();
	const {columns} = useTerminalSize();
	const [typed, setTyped] = useState('');
	useCommands(
		(key) => {
			if (key !== KEYS.escape) return false;
			onFault('');
			onBack();
			return true;
		},
		() => setTyped(''),
	);
	const label = settingOptions(settings).find((one) => one.id === id)?.label ?? '';
	const submit = (text: string): void => {
		const read = readSetting(settings, id, text);
		if (read.ok) onKeep(read.settings);
		else onFault(read.sentence);
	};
	return (
		<Frame
			head={[{text: 'Settings', tone: 'strong'}]}
			body={rowsOf([line(label), ...(fault === '' ? [] : [line(fault, 'warn')])], columns, look)}
			foot={textRows('Enter accept · Esc back · Ctrl+C leave', columns, look, 'dim')}
		>
			<Field
				value={typed}
				unit=""
				prompt={{initial: String(settings[id]), mayBeEmpty: false, given: true}}
				onChange={setTyped}
				onSubmit={submit}
			/>
		</Frame>
	);
};
