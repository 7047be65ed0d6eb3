/** Numbers that stay on one line: with their fraction and their unit. */
const NO_BREAK = '\u00a0'
const BEFORE_UNIT = /(?<=[\d⅛¼⅜½⅝¾⅞]) (?=(?:\d+\/\d+ )?(?:cm|mm|m|in|yd|%)(?!\p{L}))/gu

/** "41.3 cm", "16 1/4 in", "1⅛ yd", "5 %" with spaces that do not break, wherever they stand in a sentence. */
export const unbroken = (text: string): string => text.replace(BEFORE_UNIT, NO_BREAK)
