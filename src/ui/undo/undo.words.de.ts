import type { UNDO_WORDS as English } from './undo.words.ts'

export const UNDO_WORDS: typeof English = {
  acts: 'Schritte',
  back: 'Zurücknehmen',
  again: 'Noch einmal',
  keyLabel: (key, act) => `${key}: ${act}`,
  typed: (measurement, length) => `${measurement}, ${length}`,
  withdrawn: (measurement, length) => `${measurement}, Ablesung ${length} gestrichen`,
  made: (name, was, is) => `${name}, von ${was} auf ${is}`,
  tapeStands: (measurement) => `${measurement}, das Maßband hat recht`,
  tapedAnew: (measurement) => `${measurement}, alle Ablesungen gestrichen`,
  change: (complaint) => `die Änderung für „${complaint}“`,
  changeTakenBack: (complaint) => `das Zurücknehmen der Änderung für „${complaint}“`,
  aChoice: 'eine Wahl',
  hung: (name) => `${name} an die Stange gehängt`,
  hungAgain: (name) => `${name} wieder aufgehängt`,
  notes: (round) => `die Notizen zu Runde ${round}`,
  renamed: (was, is) => `${was} umbenannt in ${is}`,
  takenOff: (name) => `${name} von der Stange genommen`,
  howItIsCut: (name) => `${name}, wie es zugeschnitten wird`,
  takenBack: (act) => `Zurückgenommen: ${act}.`,
  doneAgain: (act) => `Wieder getan: ${act}.`,
  tooLate: (act) =>
    `Das lässt sich nicht mehr zurücknehmen: ${act}. Es wurde seither geändert, oder die Runde ist auf Papier. Nichts wurde geändert.`,
}
