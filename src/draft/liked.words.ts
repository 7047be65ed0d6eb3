/** The arithmetic from a garment laid flat, as she would do it. */
export const LIKED_WORDS = {
  length: (flat: string, napeToWaist: string, waist: string, below: string): string =>
    `${flat} less ${napeToWaist}, ${waist}: ${below} below the waist.`,
  girth: (flat: string, girth: string, ease: string, quarter: string): string =>
    `Twice ${flat} less ${girth} is ${ease} all round; a quarter of it on each half is ${quarter}.`,
}
