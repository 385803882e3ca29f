import {readdirSync, readFileSync} from 'node:fs';
import path from 'node:path';

const PACKAGE_FOLDER = /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//;

/** The licences of all packages that a bundle took in, one text for all that share it. */
export const licenceTexts = (inputs, root) => {
	const namesOfText = new Map();
	const folders = new Set([...inputs].map((input) => PACKAGE_FOLDER.exec(input)?.[1]).filter(Boolean));
	for (const folder of [...folders].sort()) {
		const {name, version, license} = JSON.parse(readFileSync(path.join(root, folder, 'package.json'), 'utf8'));
		const file = readdirSync(path.join(root, folder)).find((entry) => /^licen[cs]e/i.test(entry));
		const text = file ? readFileSync(path.join(root, folder, file), 'utf8').trim() : `Licence: ${license}`;
		namesOfText.set(text, [...(namesOfText.get(text) ?? []), `${name} ${version}`]);
	}
	return [...namesOfText].map(([text, names]) => `${names.join(', ')}\n\n${text}\n`).join(`\n${'-'.repeat(80)}\n\n`);
};
