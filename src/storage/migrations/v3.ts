/**
 * Version 3: a round carries what was worn (movements, notes by zone, verdict, cloth, paper), the
 * round it branched from, and the words that were printed; photos of one view no longer replace
 * each other. Rows before it lack these and are read as saying nothing yet, so nothing is
 * rewritten; the number keeps an older page, which would put such a round aside, from opening it.
 */
export const V3 = { version: 3, stores: {} } as const
