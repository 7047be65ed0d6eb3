/**
 * Version 2: a garment carries how it is cut. Rows of version 1 lack it and are read as usual, so
 * nothing is rewritten; the number keeps a page of version 1, which would put such a garment
 * aside, from opening the store at all.
 */
export const V2 = { version: 2, stores: {} } as const
