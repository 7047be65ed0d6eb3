/**
 * What a piece of paper work was about, as it is kept with the round: "A4, 14 sheets, muslin",
 * "run, 25 pages", "3 pages". The same in every language, because kept work opens in any of them;
 * `aboutSaid` says it in hers.
 */
import type { Stuff } from '../../output/finish.ts'
import { ABOUT_WORDS } from './cut.words.ts'

export const aboutSheets = (size: string, sheets: number, stuff: Stuff): string =>
  `${size.toUpperCase()}, ${sheets === 1 ? '1 sheet' : `${sheets} sheets`}, ${stuff}`
export const aboutPages = (pages: number): string => `${pages} ${pages === 1 ? 'page' : 'pages'}`
export const aboutRun = (pages: number): string => `run, ${aboutPages(pages)}`

const SHEETS = /^(\w+), (\d+) sheets?, (muslin|cloth)$/
/** The run was first kept in the words it was said in. */
const PAGES = /^(?:(run|everything as one run), )?(\d+) pages?$/

/** In her words; what was kept in another form is said as it stands. */
export function aboutSaid(about: string): string {
  const [, paper, sheets, stuff] = SHEETS.exec(about) ?? []
  if (paper !== undefined)
    return ABOUT_WORDS.sheets(
      paper === 'ROLL' ? ABOUT_WORDS.roll : paper,
      Number(sheets),
      stuff === 'cloth' ? 'cloth' : 'muslin',
    )
  const [, whole, pages] = PAGES.exec(about) ?? []
  if (pages === undefined) return about
  const said = ABOUT_WORDS.pages(Number(pages))
  return whole === undefined ? said : ABOUT_WORDS.run(said)
}
