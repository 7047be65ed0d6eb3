/**
 * Version 9: the pixels of a photo and what was read from it may be closed with a passphrase (see
 * photo-lock.ts). Rows before it lie in the open and are read as usual; they are closed one by one
 * when she sets a passphrase. The number keeps an older page, which would put closed rows aside,
 * from opening the store.
 */
export const V9 = { version: 9, stores: {} } as const
