/** The four ways cloth can lie, as seen on the page: rising goes up to the right. */
export const FOLDS = ['level', 'rising', 'upright', 'falling'] as const
export type Fold = (typeof FOLDS)[number]

/** Degrees a level fold is turned by, clockwise on the page. */
export const FOLD_TURN: Readonly<Record<Fold, number>> = {
  level: 0,
  rising: -45,
  upright: -90,
  falling: 45,
}
