import {expect, it} from 'vitest';
import {desktopOpener, openOnDesktop} from '../../source/terminal/open-on-desktop.js';

it.each([
	['linux', {}, undefined],
	['linux', {DISPLAY: ''}, undefined],
	['linux', {DISPLAY: ':0'}, 'xdg-open'],
	['linux', {WAYLAND_DISPLAY: 'wayland-0'}, 'xdg-open'],
	['freebsd', {DISPLAY: ':0'}, 'xdg-open'],
	['darwin', {}, 'open'],
	['win32', {}, 'explorer.exe'],
] as const)('On %s with %j a file is opened by %s', (platform, variables, opener) => {
	expect(desktopOpener({platform, variables})).toBe(opener);
});

it('Nothing comes of a program that is not there', async () => {
	// No system but that of its name has it; starting it fails after the call.
	await expect(openOnDesktop('/nowhere/at/all', {platform: 'win32', variables: {}})).resolves.toBeUndefined();
	await new Promise((resolve) => setTimeout(resolve, 100));
});
