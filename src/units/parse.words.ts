/** What is asked about a typed length, or answered. */
export const PARSE_WORDS = {
  range: (least: string, most: string): string => `${least} to ${most}`,
  outside: (said: string, range: string): string =>
    `${said} lies outside ${range}. Choose what the tape said, or read it again.`,
  outsideInEveryUnit: (typed: string, range: string, example: string): string =>
    `"${typed}" is outside ${range} in every unit. Read the tape again and write the unit too, as in ${example}.`,
  moreThanOneUnit: (typed: string): string =>
    `"${typed}" can be meant in more than one unit. Choose one, or write the unit after it.`,
  outsideInHerUnit: (said: string, range: string): string =>
    `${said} lies outside ${range}. Choose what you meant, or write the unit after it.`,
  thousandsOrDecimals: (typed: string): string =>
    `The comma in "${typed}" can part thousands or decimals. Choose one, or write it without the comma.`,
  tooLong: (said: string, tape: string, example: string): string =>
    `${said} is longer than a tape of ${tape}. Read it again and write it as ${example}.`,
}
