export const FORMAT_WORDS = {
  /** A change of nothing. */
  same: 'same',
  /** Between a number and its unit. */
  gap: ' ',
}
