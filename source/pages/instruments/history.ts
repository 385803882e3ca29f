/** Something done to an arm between two checks: a day as yyyy-mm-dd, a letter on the axis, and what it stands for. */
export type HistoryEvent = {readonly date: string; readonly mark: string; readonly label: string};
