/**
 * Version 5: a round carries the first things that were ticked, how its level and plumb lines lay,
 * and how far the hem rose in a movement. Rows before it lack these and are read as saying nothing
 * yet; ticks that lay beside the store are taken over when the round is opened on the Fit screen.
 */
export const V5 = { version: 5, stores: {} } as const
