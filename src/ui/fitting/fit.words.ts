/** Words of the place itself: before there is a muslin, between the sheets, and what was kept. */
export const FIT_WORDS = {
  title: 'What do you see?',
  about: (garment: string, muslin: number) =>
    `${garment}, muslin ${muslin} on the body. The draft may be wrong, never you.`,
  aboutNone: 'Here you say what the cloth does. The draft may be wrong, never you.',

  noGarment: 'This garment is not on the rail.',
  noGarmentWhy: 'It may have been taken off, or the address was typed by hand.',
  backToRail: 'Back to the rail',
  noMuslin: 'No muslin is sewn yet.',
  missing: (count: number) =>
    `${count === 1 ? 'One number is' : `${count} numbers are`} still to be taped before a muslin can be drawn. When the muslin is on the body, say here what the cloth does.`,
  openBook: 'Open the tape book',
  notOnPaper: (round: number) => `Round ${round} is not on paper yet.`,
  sewFirst: (round: number) =>
    `Print it at true scale or draw it with ruler and square, sew a muslin from it, and come back with the muslin on. From then on the numbers of round ${round} stay as they are; what changes goes into round ${round + 1}.`,
  muslinAtMost: 'For a muslin at most.',
  haveSewn: 'I have sewn this muslin',
  onPaperFirst: 'Put it on paper first',

  youSee: 'You see',
  differently: 'Say it differently',
  seeChange: 'See what would change',
  seeOutcome: 'See what it comes to',
  question: 'Next: one question',
  seeHeard: 'See what that may be',
  saySeen: 'Say what you see',

  takenBack: 'Taken back. The draft is as it was before this change.',
  kept: (round: number) => `Kept with round ${round}. The draft stays as it is.`,
  noted: (round: number, words: string) => `Kept as a note with round ${round}: ${words}`,
  nothingChanged: 'Nothing was changed.',
}
