import type {AtRadius} from '../../procedure/step-values.js';

/** ' at 68 mm', where the radius is known. */
export const atRadius = ({radiusMm}: AtRadius): string =>
	radiusMm === undefined ? '' : ` at ${Number(radiusMm.toFixed(1))} mm`;
