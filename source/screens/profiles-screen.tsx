import {type ReactNode, useMemo} from 'react';
import {profilePages} from '../pages/profile-pages.js';
import type {Workbench} from '../workbench.js';
import {PagesScreen} from './pages-screen.js';

type ProfilesScreenProps = {readonly workbench: Workbench; readonly onBack: () => void};

/** The profiles on file: to look at, rename, correct and set aside. */
export const ProfilesScreen = ({workbench, onBack}: ProfilesScreenProps): ReactNode => {
	const pages = useMemo(() => profilePages(workbench), [workbench]);
	return <PagesScreen pages={pages} onOut={onBack} />;
};
