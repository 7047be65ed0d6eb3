import type {
  LOCK_WORDS as EnglishLock,
  LOCKED_WORDS as EnglishLocked,
} from './photo-lock.words.ts'

export const LOCK_WORDS: typeof EnglishLock = {
  title: 'Fotos unter Passphrase',
  open: 'Fotos verlassen dieses Gerät nie von selbst. Wer diesen Browser öffnet, kann sie sehen, wenn keine Passphrase sie hier verschließt. Nach ihr wird bei jedem Öffnen der Seite gefragt.',
  setKey: 'Passphrase festlegen',
  unlocked: 'Mit deiner Passphrase verschlossen, in diesem Fenster offen.',
  lockNow: 'Jetzt verschließen',
  acts: {
    set: 'Fotos damit verschließen',
    change: 'Passphrase ändern',
    takeOff: 'Passphrase entfernen',
  },
  doneLead: 'Fertig.',
  done: {
    set: 'Jedes hier gesicherte Foto ist verschlossen. Schreib die Passphrase dort auf, wo dieses Gerät nicht ist: Ohne sie öffnet sie niemand.',
    change: 'Von jetzt an öffnet die neue Passphrase die Fotos.',
    takeOff: 'Die Fotos liegen wieder offen da, wie auf jedem Gerät.',
  },
  notDone: 'Nicht ausgeführt.',
  notAlike:
    'Die beiden sind nicht gleich. Tipp die neue Passphrase zweimal ein, beide Male gleich.',
  asItIs: 'Bisherige Passphrase',
  fresh: (characters) => `Neue Passphrase, mindestens ${characters} Zeichen`,
  onceMore: 'Dieselbe noch einmal',
  forgotten: 'Vergessen lässt sie sich nicht wiederfinden: Die Zahlen bleiben, die Fotos sind weg.',
  leave: 'Lassen, wie es ist',
  workedOut: 'Die Passphrase wird geprüft.',
  photosOf: (done, all) =>
    `${done} von ${all} Fotos. Jedes wird vor dem nächsten gesichert: Nichts geht verloren, wenn die Seite schließt.`,
}

export const LOCKED_WORDS: typeof EnglishLocked = {
  lead: 'Deine Fotos sind verschlossen.',
  numbersStand: 'Die Zahlen gelten auch ohne sie.',
  passphrase: 'Passphrase der Fotos',
  open: 'Fotos öffnen',
  haveForgotten: 'Ich habe sie vergessen',
  notOpened: 'Nicht geöffnet.',
  forgotten:
    'Ohne sie öffnet sie niemand, auch diese Seite nicht. Jede Zahl bleibt: Maßbuch, Schnitte, Runden und was du geschrieben hast. Nur die verschlossenen Fotos lassen sich löschen, um neu anzufangen; eine Datei, die du mit Fotos gespeichert hast, öffnet sich weiter mit ihrer eigenen Passphrase.',
  letGo: 'Die verschlossenen Fotos endgültig löschen',
  leave: 'Verschlossen lassen',
  one: 'Dieses Foto ist verschlossen. Öffne deine Fotos mit ihrer Passphrase.',
  notHere:
    'Dieses Foto ist nicht in diesem Browser. Es liegt dort, wo es aufgenommen wurde, oder in einer Sicherung.',
}
