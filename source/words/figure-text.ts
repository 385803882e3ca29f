/** Figures and verdicts in the words of the language in use. */
export {sideForce, verdictWord} from '#language/figures';
