/** What kinds of cloth are called, and what each asks for. */
export const CLOTH_KIND_WORDS = {
  lightCotton: {
    name: 'light soft cotton',
    prepare: 'Wash and dry it twice as the garment will be washed: cotton keeps shrinking.',
    mind: [] as readonly string[],
  },
  crispCotton: {
    name: 'crisp cotton',
    prepare: 'Wash and dry it twice as the garment will be washed: cotton keeps shrinking.',
    mind: [] as readonly string[],
  },
  rayon: {
    name: 'rayon or viscose',
    prepare: 'Wash and dry it twice: rayon goes on shrinking over several washes.',
    mind: ['It slips: pin every hand’s width and cut on a table, never over its edge.'],
  },
  silk: {
    name: 'silk',
    prepare: 'Wash or steam it as the garment will be treated. Water may mark it: try a corner.',
    mind: ['Fine new needle and pins: a blunt one draws threads.', 'Press from the wrong side.'],
  },
  linen: {
    name: 'linen',
    prepare: 'Wash and dry it as the garment will be washed, and press it damp.',
    mind: ['It frays: finish each edge before the next seam crosses it.'],
  },
}

export const CRISP_WARNING: string =
  'Crisp cotton stands away from a draped sleeve instead of falling. Try the drape test first.'

export const DRAPE_WORDS = {
  falls: 'It falls in soft folds: right for a draped sleeve.',
  between: 'It falls in wide folds: the sleeve will stand out a little.',
  stands: 'It stands: take a softer cloth for a draped sleeve.',
}

/** What the test means for the sleeve, where its cloth is made ready. */
export const DRAPE_WARNINGS = {
  falls: undefined,
  between:
    'On the drape test the cloth fell in wide folds: the draped sleeve will stand out a little.',
  stands:
    'On the drape test the cloth stood: the draped sleeve will stand away instead of falling. Take a softer cloth, or know that before you cut.',
}
