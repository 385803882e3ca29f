import {createContext, useContext} from 'react';
import type {Tone} from '../pages/shown-lines.js';
import {words} from '../words/index.js';
import {ascii} from './ascii.js';
import type {RowTone} from './body.js';

/** How things are drawn here: what the terminal can show and what the user asked for. */
export type Look = {
	readonly color: boolean;
	/** Box characters and marks beyond ASCII. */
	readonly unicode: boolean;
	/** Sentences instead of drawings. */
	readonly screenReader: boolean;
};

const LookContext = createContext<Look>({color: false, unicode: true, screenReader: false});
export const LookProvider = LookContext.Provider;
export const useLook = (): Look => useContext(LookContext);

type Style = {
	readonly color?: string;
	readonly bold?: boolean;
	readonly dimColor?: boolean;
	readonly inverse?: boolean;
};

// The sixteen colours that users can remap; never red against green, and never colour alone: a mark stands before the words.
const styles: Readonly<Record<RowTone, Style>> = {
	bar: {inverse: true, bold: true},
	plain: {},
	strong: {bold: true},
	good: {color: 'cyan'},
	warn: {color: 'yellow'},
	bad: {color: 'magenta', bold: true},
	aside: {},
	dim: {dimColor: true},
	// What is wanted, beside what was read: it is not judged.
	curve: {color: 'blueBright'},
};

export function styleOf(tone: RowTone, {color}: Look): Style {
	const {color: hue, ...rest} = styles[tone];
	return color && hue ? {...rest, color: hue} : rest;
}

const marks: Readonly<Partial<Record<Tone, readonly [unicode: string, ascii: string]>>> = {
	good: ['✓ ', '+ '],
	warn: ['▲ ', '! '],
	bad: ['✗ ', 'x '],
};

const spokenMarks: Readonly<Partial<Record<Tone, string>>> = words.faces.spokenMarks;

/** The mark that tells a tone without colour; a word where the screen is read aloud. */
export const toneMark = (tone: Tone, {unicode, screenReader}: Look): string =>
	(screenReader ? spokenMarks[tone] : marks[tone]?.[unicode ? 0 : 1]) ?? '';

/** A text as this terminal can show it. */
export const written = (text: string, {unicode}: Look): string => (unicode ? text : ascii(text));
