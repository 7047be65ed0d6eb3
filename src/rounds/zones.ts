/** Parts of the body that notes, close-ups and complaints are kept by, from the top down. */
export const ZONES = [
  'neck',
  'shoulder',
  'bust',
  'armhole',
  'back',
  'waist',
  'sleeve',
  'whole',
] as const
export type Zone = (typeof ZONES)[number]

/** The letters that our table of complaints begins its ids with. */
const LETTERS: Readonly<Record<string, Zone>> = {
  N: 'neck',
  SH: 'shoulder',
  B: 'bust',
  A: 'armhole',
  K: 'back',
  W: 'waist',
  L: 'sleeve',
  D: 'sleeve',
  X: 'whole',
}

/** B8 → bust; an id of no known letter belongs to the whole garment. */
export const zoneOfComplaint = (id: string): Zone =>
  LETTERS[/^[A-Z]+/.exec(id)?.[0] ?? ''] ?? 'whole'
