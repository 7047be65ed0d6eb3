/** Angles. Radians inside, degrees only where she reads them. */
export type Radians = number & { readonly __unit: 'rad' }

export const radians = (value: number): Radians => value as Radians
export const toDegrees = (angle: Radians): number => (angle * 180) / Math.PI
