import {benchAdvice} from './advice.js';
import {arms, looks} from './arms.js';
import {bench, hands, known, motion, seen} from './bench.js';
import {proof} from './proof.js';
import {truth} from './truth.js';

/** The invented arms and their bench, the proof that is made with them, and what practice teaches. */
export const practice = {advice: benchAdvice, arms, bench, hands, known, looks, motion, proof, seen, truth};
