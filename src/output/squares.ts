/** The two squares on page one that tell whether a print is true. */
import { inches, mm } from '../units/length.ts'

/** Sides of the two squares. */
export const SQUARE_MM = mm(100)
export const SQUARE_INCH = inches(4)
