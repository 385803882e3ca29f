const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** '2026-05-04' as '4 May 2026'. */
export function dayText(date: string): string {
	const [year, month, day] = date.split('-').map(Number);
	return `${day} ${months[(month ?? 1) - 1]} ${year}`;
}
