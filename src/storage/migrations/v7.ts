/**
 * Version 7: the outline of a photo's reading lies in the store as one block of numbers (see
 * packed-photo.ts). Rows before it are read as they are and packed when they are next kept; the number
 * keeps an older page, which would put a packed photo aside, from opening the store.
 */
export const V7 = { version: 7, stores: {} } as const
