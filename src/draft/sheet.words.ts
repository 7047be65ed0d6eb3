/** What the verbs of the sheet say by themselves. */
export const SHEET_WORDS = {
  distance: (from: string, to: string): string => `distance ${from}–${to}`,
  legsEqual: 'legs equal in pairs',
  /** A point where a step is named by its points; a lettered one stays a letter. */
  point: (name: string): string => name,
}
