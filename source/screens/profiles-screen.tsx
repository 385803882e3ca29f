import {type ReactNode, useState} from 'react';
import {profileLines} from '../findings/profile-lines.js';
import {line} from '../findings/shown-lines.js';
import type {Workbench} from '../workbench.js';
import {MenuScreen} from './menu-screen.js';

type ProfilesScreenProps = {readonly workbench: Workbench; readonly onBack: () => void};

/** The profiles on file, to look at. They are made and corrected within a check. */
export const ProfilesScreen = ({workbench, onBack}: ProfilesScreenProps): ReactNode => {
	const [open, setOpen] = useState<string>();
	const profiles = workbench.profiles();
	const one = profiles.find(({id}) => id === open);
	if (one)
		return (
			<MenuScreen
				key={one.id}
				title={one.name}
				shown={profileLines(one)}
				options={[{id: 'back', label: 'back to the list'}]}
				onChoose={() => setOpen(undefined)}
				onBack={() => setOpen(undefined)}
				backHint="Esc back"
			/>
		);
	return (
		<MenuScreen
			key="list"
			title="Profiles"
			shown={[
				line(
					profiles.length === 0
						? 'None yet: they are kept as you answer the questions of a check.'
						: 'Kept from your checks; to correct one, answer its step anew within a check.',
				),
			]}
			options={profiles.map(({id, kind, name}) => ({id, label: `${kind}: ${name}`}))}
			onChoose={setOpen}
			onBack={onBack}
			backHint="Esc back"
		/>
	);
};
