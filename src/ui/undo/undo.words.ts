/** What an act was, in a few words that stand after "Taken back:". */
export const UNDO_WORDS = {
  acts: 'Acts',
  back: 'Take back',
  again: 'Do again',
  /** A key with what it would take back, read out. */
  keyLabel: (key: string, act: string) => `${key}: ${act}`,
  typed: (measurement: string, length: string) => `${measurement}, ${length}`,
  withdrawn: (measurement: string, length: string) =>
    `${measurement}, the reading ${length} withdrawn`,
  made: (name: string, was: string, is: string) => `${name}, ${was} made ${is}`,
  tapeStands: (measurement: string) => `${measurement}, the tape is right`,
  tapedAnew: (measurement: string) => `${measurement}, all readings withdrawn`,
  change: (complaint: string) => `the change for “${complaint}”`,
  changeTakenBack: (complaint: string) => `taking back the change for “${complaint}”`,
  aChoice: 'a choice',
  hung: (name: string) => `${name} hung on the rail`,
  hungAgain: (name: string) => `${name} hung again`,
  notes: (round: number) => `the notes of round ${round}`,
  renamed: (was: string, is: string) => `${was} renamed ${is}`,
  takenOff: (name: string) => `${name} taken off the rail`,
  howItIsCut: (name: string) => `${name}, how it is cut`,
  takenBack: (act: string) => `Taken back: ${act}.`,
  doneAgain: (act: string) => `Done again: ${act}.`,
  tooLate: (act: string) =>
    `Too late to take this back: ${act}. It was changed since, or its round is on paper. Nothing was changed.`,
}
