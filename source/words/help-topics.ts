/** What `help` and the manual page explain: apart from the other words, because nothing else needs them. */
export {type HelpBlock, type Topic, topics} from '#language/commands/topics';
