/** Set in the store once everything hangs there: an example that was half made is made anew. */
export const WHOLE = 'example'
