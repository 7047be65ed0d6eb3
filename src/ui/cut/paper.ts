/** The paper of a muslin as files. The PDF code and its font are fetched from our own origin on first use. */
import fontUrl from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url'
import type { Draft } from '../../draft/draft.ts'
import type { SheetWords } from '../../output/draft-pages.ts'

export type PaperMade =
  | { readonly ok: true; readonly file: Blob; readonly sheets: number }
  | { readonly ok: false; readonly reason: string }

export async function paperFile(draft: Draft, words: SheetWords): Promise<PaperMade> {
  const [{ draftPdf }, font] = await Promise.all([import('../../output/pdf.ts'), readFont()])
  const made = await draftPdf(draft, { ...words, font })
  if (!made.ok) return made
  return {
    ok: true,
    file: new Blob([new Uint8Array(made.bytes)], { type: 'application/pdf' }),
    sheets: made.sheets,
  }
}

async function readFont(): Promise<Uint8Array> {
  const answer = await fetch(fontUrl)
  if (!answer.ok) throw new Error(`the printed face answered ${answer.status}`)
  return new Uint8Array(await answer.arrayBuffer())
}

/** A file name that says what it is: "linen-blouse-round-2.pdf". */
export const fileName = (garment: string, round: number, what: string): string =>
  `${garment
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')}-round-${round}${what}`
