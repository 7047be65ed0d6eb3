/**
 * Version 4: a garment carries what she said of her cloth and which steps are sewn. Rows before it
 * lack both and are read as usual, so nothing is rewritten; the number keeps an older page, which
 * would put such a garment aside, from opening the store.
 */
export const V4 = { version: 4, stores: {} } as const
