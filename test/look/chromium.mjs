// A headless Chromium that is spoken to over two pipes: started once, it takes any number of pictures of one page.
import {spawn, spawnSync} from 'node:child_process';
import {mkdtempSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {pathToFileURL} from 'node:url';

export const hasChromium = () => spawnSync('chromium', ['--version']).error === undefined;

/** Opens a Chromium. Its sandbox does not work for root. */
export async function openChromium() {
	const profile = mkdtempSync(path.join(tmpdir(), 'armdrift-chromium-'));
	const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
	const flags = ['--headless=new', '--disable-gpu', '--hide-scrollbars', '--remote-debugging-pipe'];
	const program = spawn('chromium', [...flags, `--user-data-dir=${profile}`, ...sandbox, 'about:blank'], {
		stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'],
	});
	const ended = new Promise((resolve) => program.once('exit', resolve));
	const [, , , toIt, fromIt] = program.stdio;
	const waiting = new Map();
	const listeners = new Set();
	let rest = '';
	let lastId = 0;
	fromIt.setEncoding('utf8').on('data', (chunk) => {
		const messages = (rest + chunk).split('\0');
		rest = messages.pop() ?? '';
		for (const one of messages.map((text) => JSON.parse(text))) {
			for (const listener of listeners) listener(one);
			const {resolve, reject} = waiting.get(one.id) ?? {};
			waiting.delete(one.id);
			if (one.error) reject?.(new Error(`chromium: ${one.error.message}`));
			else resolve?.(one.result);
		}
	});
	const send = (method, params = {}, sessionId = undefined) =>
		new Promise((resolve, reject) => {
			const id = ++lastId;
			waiting.set(id, {resolve, reject});
			toIt.write(`${JSON.stringify({id, method, params, sessionId})}\0`);
		});
	program.once('exit', () => {
		for (const {reject} of waiting.values()) reject(new Error('chromium ended before it was done.'));
	});
	const {targetInfos} = await send('Target.getTargets');
	const {targetId} = targetInfos.find(({type}) => type === 'page');
	const {sessionId} = await send('Target.attachToTarget', {targetId, flatten: true});
	const toPage = (method, params) => send(method, params, sessionId);
	await toPage('Page.enable');

	return {
		/** Shows a file, and waits until it is there. */
		async show(file) {
			const loaded = new Promise((resolve) => {
				const listener = ({method}) => {
					if (method !== 'Page.loadEventFired') return;
					listeners.delete(listener);
					resolve();
				};
				listeners.add(listener);
			});
			await toPage('Page.navigate', {url: pathToFileURL(file).href});
			await loaded;
		},
		/** Where the parts of the page are that a selector names, with the id of each. */
		async partsOf(selector) {
			const expression = `JSON.stringify([...document.querySelectorAll(${JSON.stringify(selector)})].map((one) => {
				const {x, y, width, height} = one.getBoundingClientRect();
				return {id: one.closest('[id]')?.id, x, y, width, height};
			}))`;
			const {result} = await toPage('Runtime.evaluate', {expression});
			return JSON.parse(result.value);
		},
		/** A picture of a part of the page, as large as it is or scaled. */
		async photograph({x, y, width, height}, file, scale = 1) {
			const clip = {x, y, width, height, scale};
			const {data} = await toPage('Page.captureScreenshot', {format: 'png', captureBeyondViewport: true, clip});
			writeFileSync(file, Buffer.from(data, 'base64'));
		},
		async close() {
			await send('Browser.close').catch(() => {});
			await ended;
			rmSync(profile, {recursive: true, force: true, maxRetries: 5});
		},
	};
}
