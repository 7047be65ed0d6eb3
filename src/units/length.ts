/**
 * Lengths. Inside src/ every length is a number of millimetres wearing the `Mm` brand;
 * centimetres and inches exist only in `parse.ts`, `format.ts` and the fields of the screens.
 */
export type Mm = number & { readonly __unit: 'mm' }

export const mm = (millimetres: number): Mm => millimetres as Mm
export const cm = (centimetres: number): Mm => (centimetres * 10) as Mm
/** An international inch is 25.4 mm exactly (ISO 80000-3, annex of non-SI units). */
export const inches = (count: number): Mm => (count * MM_PER_INCH) as Mm
export const MM_PER_INCH = 25.4
