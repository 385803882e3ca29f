export {dayText} from '../../words/dates.js';
