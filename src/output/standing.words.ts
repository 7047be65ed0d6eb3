/** The words that stand across everything that does not rest on the tape. */
export const NOT_CONFIRMED: string = 'not confirmed by tape'
export const NOT_FOR_CUTTING: string = 'not for cutting'

export const STANDING_WORDS = {
  /** Across every page that is not for cutting. */
  looking: `for looking at, ${NOT_FOR_CUTTING}`,
  notConfirmed: `${NOT_CONFIRMED}, ${NOT_FOR_CUTTING}`,
  /** On page one: what these sheets may be cut from. */
  confirmed: 'confirmed by tape',
  confirmedFor: {
    muslin: 'confirmed by tape, for the muslin',
    cloth: 'confirmed by tape, for the cloth',
  },
  notYetForCloth: 'confirmed by tape, for a muslin and not yet for cloth: see “Before you cut”',
  invented: (standing: string) => `${standing} · invented numbers`,
}

/** Why sheets are refused. */
export const NO_SHEETS = {
  notConfirmed: `These numbers are ${NOT_CONFIRMED}, so no sheets for cutting are made. Tape what is missing, twice each, and print again.`,
  unsewable: (findings: string) => `${findings} No sheets for cutting are made.`,
  notForCloth: (findings: string) => `For a muslin, not yet for cloth. ${findings}`,
}
