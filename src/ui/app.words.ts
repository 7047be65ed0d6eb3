/** What is said over every page: what was not kept, what happened elsewhere, a newer version. */
export const APP_WORDS = {
  /** The title of the window. */
  title: (page: string) => `${page} · Tapetrue`,
  skip: 'Skip to the work',
  notKept: 'Not kept.',
  doAgain: 'Do it again',
  agreeLead: 'The tape and the muslin agree.',
  good: 'Good',
  elsewhereLead: 'Changed in another window.',
  elsewhere: 'What you see here is what that window kept.',
  newerLead: 'A newer version lies ready.',
  newer:
    'Finish what you are typing first; the page opens anew, and everything kept stays as it is.',
  openNewer: 'Open the newer version',
  /** A number taped anew says what a muslin said. */
  answered: (measurement: string, round: number, complaint: string) =>
    `The tape says of ${measurement.toLowerCase()} what muslin ${round} said: the draft follows the number now, and the change for “${complaint}” that stood in for it is taken back.`,
}

export const NO_STORE_WORDS = {
  title: 'Nothing can be kept',
  heading: 'Nothing can be kept here',
}
