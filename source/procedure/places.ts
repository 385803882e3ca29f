/** Where rounds are taken: with the bias off at the probe radii, and with it on. */
export const offPlaces = ['inner', 'outer', 'extra', 'closing'] as const;
export const onPlaces = ['bias-outer', 'bias-middle', 'bias-inner'] as const;
export const places = [...offPlaces, ...onPlaces] as const;

/** Where a round may be taken with the gauge turned: the ids of the answer that says where. */
export const turningPlaces = ['inner', 'outer'] as const satisfies readonly (typeof offPlaces)[number][];

export type ProbeEnd = (typeof turningPlaces)[number];
export type OffPlace = (typeof offPlaces)[number];
export type OnPlace = (typeof onPlaces)[number];
export type Place = OffPlace | OnPlace;

/** The step that takes the rounds of a place. */
export const stepOfRounds = <P extends OffPlace | OnPlace>(place: P): `probe-${P}` => `probe-${place}`;

/** The radius of a place with the bias on, by its name. */
export const radiusOf = (place: OnPlace): 'outer' | 'middle' | 'inner' => onRadiusNames[place];
const onRadiusNames = {'bias-outer': 'outer', 'bias-middle': 'middle', 'bias-inner': 'inner'} as const;

export const isOnPlace = (place: string | undefined): place is OnPlace => onPlaces.some((one) => one === place);
