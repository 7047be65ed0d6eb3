/**
 * Version 6: a garment carries her own lengths, those of a piece she drew by hand and of a garment
 * she likes. Rows before it lack them and are read as usual, so nothing is rewritten; the number
 * keeps an older page, which would put such a garment aside, from opening the store.
 */
export const V6 = { version: 6, stores: {} } as const
