/** The invented example: its own texts, and what is said of it. */
export const EXAMPLE_WORDS = {
  name: 'Invented example, sleeveless blouse',
  cloth: 'washed calico',
  notes: [
    'Sewn with long stitches. Waist marked with elastic.',
    'The armhole lies close now, the waist sits on the elastic.',
  ] as readonly [string, string],
  notMade:
    'The example could not be hung here. Nothing of yours was touched; reload the page to try again.',
  banner: 'Invented example',
  lead: 'This is an invented example.',
  about:
    'Body, muslins and complaints are made up. Nothing of yours is in it, and what you change here goes when it is taken down.',
  takeDown: 'Take the example down',
}
