/** The words that stand across everything that does not rest on the tape. */
export const NOT_CONFIRMED = 'not confirmed by tape'
export const NOT_FOR_CUTTING = 'not for cutting'
