/** What is printed on the sheet for the photos. Lines short enough for 180 mm in 4.2 mm type. */
export const MARKER_SHEET_WORDS: {
  readonly thisHalf: readonly [string, string]
  readonly fold: string
  readonly print: string
  readonly check: (millimetres: number) => string
  readonly advice: readonly string[]
} = {
  /** In two lines, at the edge of the sheet. */
  thisHalf: ['this half', 'in the photo'],
  fold: 'Fold back along the dashes.',
  print: 'Print at 100 %, not fitted to the page.',
  check: (millimetres) => `Check with a tape: this bar is ${millimetres} mm long.`,
  advice: [
    'Longer or shorter: print again. This sheet gives every photo its scale.',
    'Use plain white paper. Glue the fold shut, so that the sheet hangs flat.',
    'Hang the upper half flat at the waist cord, all of the square in view.',
    'Keep the white border free of pins, fingers and cord.',
  ],
}
