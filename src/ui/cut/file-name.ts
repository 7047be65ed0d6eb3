/** Names of saved files, readable in any folder: "linen-blouse-round-2-sheets-a4.pdf". */
import { FILE_NAMES } from './cut.words.ts'

/** Letters and figures of any script are kept; everything else becomes one hyphen. */
export function fileName(garmentName: string, round: number | undefined, rest: string): string {
  const slug = garmentName
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, LONGEST)
  return [
    slug || FILE_NAMES.garment,
    ...(round === undefined ? [] : [FILE_NAMES.round(round)]),
    rest,
  ].join('-')
}
/** Some devices cut names at 64 letters; the rest of the name needs about half. Judgement. */
const LONGEST = 32
