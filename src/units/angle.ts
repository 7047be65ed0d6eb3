/** Angles. Radians inside, degrees only where she reads them. */
export type Radians = number & { readonly __unit: 'rad' }

export const radians = (value: number): Radians => value as Radians
export const fromDegrees = (degrees: number): Radians => ((degrees * Math.PI) / 180) as Radians
export const toDegrees = (angle: Radians): number => (angle * 180) / Math.PI
