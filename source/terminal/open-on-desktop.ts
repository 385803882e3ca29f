type Desktop = {
	readonly platform: NodeJS.Platform;
	readonly variables: Readonly<Record<string, string | undefined>>;
};

/** The program that opens a file as its owner is used to; undefined where nobody sits before a desktop. */
export const desktopOpener = ({platform, variables}: Desktop): string | undefined => {
	if (platform === 'darwin') return 'open';
	if (platform === 'win32') return 'explorer.exe';
	return variables.DISPLAY || variables.WAYLAND_DISPLAY ? 'xdg-open' : undefined;
};

/** Opens a file on the desktop, if there is one, and waits for nothing; where that fails, the file is there all the same. */
export async function openOnDesktop(file: string, desktop: Desktop): Promise<void> {
	const opener = desktopOpener(desktop);
	if (opener === undefined) return;
	// Node's net comes with it, which nobody needs before.
	const {spawn} = await import('node:child_process');
	const child = spawn(opener, [file], {detached: true, stdio: 'ignore'});
	child.on('error', () => {});
	child.unref();
}
