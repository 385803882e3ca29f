import {didYouMean} from '../desk/did-you-mean.js';
import {visibleText} from '../visible-text.js';
import {type UsageFaultSaid, usageText} from '../words/usage-text.js';
import type {UsageFault} from './spoken-command.js';

const MOST_LETTERS = 80;

/** A word from the command line, safe to print, and no longer than a sentence can bear. */
const shown = (word: string): string => {
	const letters = [...visibleText(word)];
	return letters.length > MOST_LETTERS ? `${letters.slice(0, MOST_LETTERS).join('')}…` : letters.join('');
};

const said = (fault: UsageFault): UsageFaultSaid => {
	switch (fault.id) {
		case 'option-unknown': {
			const meant = didYouMean(fault.flag, fault.known);
			return {id: fault.id, values: {flag: shown(fault.flag), meant}};
		}
		case 'command-unknown': {
			const {typed, known} = fault;
			return {id: fault.id, values: {typed: shown(typed), meant: didYouMean(typed, known), known}};
		}
		case 'value-wrong':
			return {id: fault.id, values: {...fault, typed: shown(fault.typed)}};
		case 'argument-missing':
			return {id: fault.id, values: fault};
		case 'value-missing':
			return {id: fault.id, values: fault};
		case 'option-missing':
			return {id: fault.id, values: fault};
		case 'too-many':
			return {id: fault.id, values: fault};
	}
};

/** What is wrong with a command line, with the word that was probably meant. */
export const usageSentence = (fault: UsageFault): string => usageText(said(fault));
