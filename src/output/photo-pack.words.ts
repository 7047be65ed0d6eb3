/** What stands on the page of dots and pocket card; no line over 176 mm in its type of 4.2 mm. */
export const PACK_WORDS = {
  check: 'Print at 100 %, not fitted to the page. Check with a tape:',
  dots: [
    'Dots, 19 mm. Fill all with one strong colour, found nowhere else.',
    'Nape, side neck, shoulder points, apexes, waist, hip.',
    'Hip: at the side, level with the fullest of the seat.',
    'The middle of a dot is the point. Stick them flat, with skin tape.',
  ],
  card: 'pocket card',
  cardMetric: '85.6 mm by 54.0 mm',
  cardInches: '3 3/8 in by 2 1/8 in',
  aboutCard: [
    'Pocket card, for when no printed sheet can hang; as large as a',
    'bank card. Cut along the dashes and glue it on stiff card.',
    'In the photo the four corners of the black band are tapped.',
  ],
}
