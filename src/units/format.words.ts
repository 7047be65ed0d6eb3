export const FORMAT_WORDS = {
  /** A change of nothing. */
  same: 'same',
}
