/** How a number is written. `locale` is for the clock and the calendar of the browser. */
export const NUMBER_WORDS = {
  decimalMark: '.',
  thousandsMark: ',',
  locale: 'en-GB',
}
