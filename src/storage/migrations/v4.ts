/**
 * Version 4: a garment carries what she said of her cloth, which steps are sewn and the corrections
 * it began with, a photo of a muslin what it shows. Rows before it lack these and are read as usual,
 * so nothing is rewritten; the number keeps an older page, which would put such rows aside, from
 * opening the store.
 */
export const V4 = { version: 4, stores: {} } as const
