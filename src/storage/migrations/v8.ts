/**
 * Version 8: a garment carries the last best layout on each width, a round the plans that were
 * printed of it. Rows before it lack them and are read as usual; the layouts are made when the cloth
 * is next looked at. The number keeps an older page, which would put such rows aside, from opening
 * the store.
 */
export const V8 = { version: 8, stores: {} } as const
