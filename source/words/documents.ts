import {documents} from '#language/documents';
import {speaker} from './speaker.js';

/** What is said of compute documents: apart from the other words, so that the first screen need not wait for it. */
export const documentWords = documents;

/** What is wrong at a key of a document, and what is wanted there. */
export const faultText = speaker(documents.faults);
