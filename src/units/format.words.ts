export const FORMAT_WORDS = {
  /** After “in”, where all numbers of a table are in them. */
  inches: 'inches',
  /** A change of nothing. */
  same: 'same',
  /** Between a number and its unit. */
  gap: ' ',
}
