/** Published ease for woven blouses: for what, and by whom. */
export const EASE_BAND_WORDS = {
  fittedBodice: { words: 'fitted bodice', source: 'a public metric ease reference' },
  shirt: { words: 'shirt', source: 'a public metric ease reference' },
  blouse: {
    words: 'blouse, extension circular',
    source: 'New Mexico State University circular C-228',
  },
  costume: {
    words: 'bodice of a costume textbook',
    source: 'a costume construction textbook of the 1960s',
  },
}
