/** What stands in every report, the same as in the manual. */
export const cautions: readonly (readonly [about: string, caution: string])[] = [
	[
		'People and amplifiers.',
		'Mute or switch off the amplifier before the stylus is touched, and keep the volume down when it first meets a record again. Unplug the mains before anything is opened.',
	],
	[
		'Licensed work.',
		"armdrift looks at mechanics only. Wiring, earthing and repair are for licensed or authorised people under your local codes. Follow the maker's instructions; the warranty may forbid touching a bearing, and bearings are not adjusted without the maker's procedure.",
	],
	[
		'Stylus and cantilever.',
		'A stylus is sharp and its cantilever breaks at a touch: keep the guard on until the very last step. Never press down on the guard of a unipivot arm.',
	],
	[
		'The deck.',
		"Until the put-back list is done, every screen says that the deck is not ready to play. The guard's mass must not stay in the tracking force.",
	],
];

/** What the method cannot do, the same as in the manual. */
export const limitsOfMethod: readonly string[] = [
	'The probe is static. It sees pull and friction at rest, not resonance, not play in a bearing, not what a warped record does.',
	'Readings in percent are only as good as the tracking force that the gauge carries; the guard counts.',
	'A limit is read at the last nudge that held, so each falls short by half a nudge on average; the band is corrected for it.',
	'Where nobody looked at the zero of the gauge, half a percent (or a step) either way is assumed for it and counted in the ±; a gauge that is farther off deceives.',
	'The room matters: wires and oil stiffen in the cold. A tilt counts fully for an arm loaded by gravity and hardly at all for a spring-loaded one.',
	'Comparisons take the uncertainties of two checks as independent; an error that both share (the same gauge out by the same amount) does not show as a change, and is not meant to.',
	'The drag behind the wanted reading is assumed; it changes with record, stylus and music. Readings with the bias on are usually one round a radius and carry no ± of their own.',
	'With one round at each radius the scatter is assumed, and the ± may hold the truth in far fewer than 95 of 100 cases.',
	'The uncertainty covers reading step, nudge, scatter, setting up, zero and scale. It cannot cover a step that was confirmed and not done, nor a force that wanders while the limits are sought (draught, a shaking table): a wander of 0.2 % takes 0.2 to 0.3 % off the band. Simulated, not measured.',
];
