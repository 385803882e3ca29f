/** Figures and verdicts in the words of the language in use. */
export {sideForce} from './en/figures.js';
