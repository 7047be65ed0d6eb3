/** Where tolerances and definitions come from. */
export const SOURCE_WORDS = {
  ownTape: 'repeatability of a tape held alone; common practice, no source',
  observer:
    'allowable observer error, ANSUR II handbook NATICK/TR-11/017, appendix G, as quoted in a public audit note',
  /** Behind a clause of the standard, whose waist lies elsewhere. */
  toOurWaist: 'to our waist',
}
