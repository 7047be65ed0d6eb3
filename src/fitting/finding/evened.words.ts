/** Letters brought to one form, so that a word typed with or without its marks is the same word. */

/** @param raw lower case */
export const evened = (raw: string): string => raw.normalize('NFD').replace(/\p{M}/gu, '')
