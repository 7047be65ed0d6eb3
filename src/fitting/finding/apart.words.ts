/** What joins one thing she says to the next. */

/** Words that join two complaints as often as two halves of one. */
export const JOINING: ReadonlySet<string> = new Set(
  'and but also plus while whereas yet though although additionally besides'.split(' '),
)
/** "As well as" and "on top of that" join too. */
export const JOINING_PHRASES: readonly (readonly string[])[] = [
  ['as', 'well', 'as'],
  ['as', 'well'],
  ['on', 'top', 'of', 'that'],
  ['in', 'addition'],
  ['together', 'with'],
]
