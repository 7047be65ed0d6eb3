/** The page of words and the pocket card. */
export const HELP_WORDS = {
  title: 'Words and pocket card',
  about: 'What the words of the trade mean here, and a card for the cloth shop.',
  words: 'Words',
  count: (found: number, all: number) => `${found} of ${all}`,
  look: 'Look for a word',
  none: 'No word here holds that. Try a shorter one.',
  card: 'Pocket card',
  noNumbers: 'Agreed numbers of the tape book will stand here.',
  rules: [
    'Tape twice, breathing out; the tape lies, it does not press.',
    'A pinned fold is cloth twice: read from the fold to the pin, times two.',
    'Change one thing, sew, look again.',
    'Wash the cloth before it is cut. Grain along the selvedge.',
    'Pins never in the mouth; close the blade after every cut.',
  ],
  print: 'Print the card',
  guide: 'The guide walks one garment from photo to sewn',
  /** Before and in the link to the licences, and the stop behind it. */
  others: 'Work of others that this page holds:',
  licences: 'licences and names',
  end: '.',
}
