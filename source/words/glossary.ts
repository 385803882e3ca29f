/** One word for one thing: apart from the other words, because only help and tests need it. */
export {glossary} from '#language/glossary';
