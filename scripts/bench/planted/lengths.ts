/**
 * The lengths by which a muslin and a body are held against each other, under one set of names.
 * `needed.ts` finds them from the numbers of the body, `sewn.ts` from the pieces; neither knows
 * the other. Millimetres: the whole garment for what runs round or across, one side for the rest.
 */
export const LENGTHS = {
  bust: 'round the body at the bust line',
  bustFront: 'its front part, side seam to side seam',
  bustBack: 'its back part',
  waist: 'round the body at the waist line',
  hip: 'round the body at the hip line',
  backLength: 'nape to the waist line, centre back',
  sideLength: 'level of the nape to the waist line at the side seam',
  frontLength: 'side neck to the waist line, over the bust',
  apexDown: 'side neck down to the level of the apex',
  apexOut: 'centre front to the apex',
  acrossBack: 'across the back, half way down the armhole',
  acrossChest: 'across the chest, half way down the armhole',
  shoulder: 'shoulder seam, its dart sewn',
  shoulderDrop: 'how far the shoulder seam falls over the length of the body’s shoulder',
  armholeFront: 'front armhole along its curve',
  underarm: 'level of the nape down to the underarm',
  frontNeck: 'side neck down to the level of the front neck edge',
  neckWidth: 'side neck to side neck',
  bustDart: 'mouth of the side bust dart',
} as const

export type LengthName = keyof typeof LENGTHS
export const LENGTH_NAMES = Object.keys(LENGTHS) as readonly LengthName[]

/** What a garment does not have is left out: a cut-in-one sleeve has no shoulder seam. */
export type Lengths = Readonly<Partial<Record<LengthName, number>>>

/** Sewn less needed: positive where there is too much cloth, or where a line lies too low. */
export function misfit(sewn: Lengths, needed: Lengths): Lengths {
  return Object.fromEntries(
    LENGTH_NAMES.flatMap((name) => {
      const [a, b] = [sewn[name], needed[name]]
      return a === undefined || b === undefined ? [] : [[name, a - b]]
    }),
  )
}

export function lengthOf(lengths: Lengths, name: LengthName): number {
  const value = lengths[name]
  if (value === undefined) throw new Error(`planted: this garment has no ${name}`)
  return value
}
