/** The printed face, as the app embeds it. */
import { readFileSync } from 'node:fs'

export const FONT = new Uint8Array(
  readFileSync(new URL('../../node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf', import.meta.url)),
)
