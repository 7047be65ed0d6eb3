import type { SAFE_WORDS as English } from './safe-keeping.words.ts'

const comma = (number: number): string => number.toFixed(1).replace('.', ',')

export const SAFE_WORDS: typeof English = {
  title: 'Verwahren',
  room: (usedBytes, quotaBytes) =>
    `${comma(usedBytes / 1e6)} MB von ${comma(quotaBytes / 1e9)} GB belegt`,
  about:
    'Alles liegt in diesem Browser auf diesem Gerät. Eine Datei davon ist deine zweite Kopie; sie verlässt das Gerät nur dorthin, wohin du sie legst.',
  fullLead: 'Der Platz für diese Seite ist fast aufgebraucht.',
  full: 'Sichere alles in eine Datei, dann lösch Fotos, deren Zahlen gesichert sind.',
  promised: 'Dieser Browser hat versprochen, die Arbeit zu behalten, wenn das Gerät voll wird.',
  notPromisedLead: 'Dieser Browser hat nicht versprochen, die Arbeit zu behalten.',
  notPromised:
    'Wird das Gerät voll oder warst du Wochen nicht hier, kann er sie löschen. Sichere ab und zu eine Datei; eine Seite auf dem Startbildschirm bleibt meistens.',
  ask: 'Ihn bitten, sie zu behalten',
  withPhotos: 'mit den noch gesicherten Fotos, mit einer Passphrase verschlossen',
  newPassphrase: (characters) => `Passphrase, mindestens ${characters} Zeichen`,
  save: 'Alles in eine Datei sichern',
  file: (day) => `tapetrue-${day}.json`,
  readBack: 'Datei einlesen',
  bringOver: 'Von einem anderen Gerät herüberbringen',
  closedFile: 'Diese Datei ist verschlossen. Ihre Passphrase',
  open: 'Datei öffnen',
  leave: 'Verschlossen lassen',
  done: 'Fertig.',
  notDone: 'Nicht ausgeführt.',
  savedClosed:
    'Die verschlossene Datei ist gespeichert. Ohne die Passphrase öffnet sie niemand, auch diese Seite nicht: Schreib sie dort auf, wo die Datei nicht liegt.',
  saved: 'Die Datei ist gespeichert. Heb sie dort auf, wo du sie suchen würdest.',
  read: (garments, rounds, photos, copies) =>
    `Eingelesen, neu: Stücke ${garments}, Runden ${rounds}, Fotos ${photos}. ${
      copies.length > 0 ? `Als Kopie daneben: ${copies.join(', ')}.` : 'Nichts wurde überschrieben.'
    }`,
  unreadable: (count) =>
    count === 1
      ? 'Ein gesicherter Eintrag war nicht zu lesen.'
      : `${count} gesicherte Einträge waren nicht zu lesen.`,
  keptAside: (reason) =>
    `Was nicht zu lesen war, liegt beiseite und geht in jede Sicherung mit. ${reason}`,
}
