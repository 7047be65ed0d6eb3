import type { PARSE_WORDS as English } from './parse.words.ts'

export const PARSE_WORDS: typeof English = {
  range: (least, most) => `${least} bis ${most}`,
  outside: (said, range) =>
    `${said} liegt nicht im Bereich ${range}. Wähl, was das Maßband sagte, oder lies noch einmal ab.`,
  outsideInEveryUnit: (typed, range, example) =>
    `„${typed}“ liegt in keiner Einheit im Bereich ${range}. Lies das Maßband noch einmal ab und schreib die Einheit dazu, etwa ${example}.`,
  moreThanOneUnit: (typed) =>
    `„${typed}“ kann in mehr als einer Einheit gemeint sein. Wähl eine oder schreib die Einheit dahinter.`,
  outsideInHerUnit: (said, range) =>
    `${said} liegt nicht im Bereich ${range}. Wähl, was du meinst, oder schreib die Einheit dahinter.`,
  thousandsOrDecimals: (typed) =>
    `Der Punkt in „${typed}“ kann Tausender oder Dezimalen trennen. Wähl eines oder schreib es ohne den Punkt.`,
  tooLong: (said, tape, example) =>
    `${said} ist länger als ein Maßband von ${tape}. Lies noch einmal ab und schreib es wie ${example}.`,
}
