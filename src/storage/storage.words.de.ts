import type {
  BACKUP_WORDS as EnglishBackup,
  SEALED_WORDS as EnglishSealed,
  STORE_WORDS as EnglishStore,
} from './storage.words.ts'

export const FULL: string =
  'Auf diesem Gerät ist kein Platz mehr, die letzte Änderung wurde nicht gesichert; alles davor ist es. Lösch ein Foto oder schaff Platz, dann ändere es noch einmal.'
export const DENIED: string =
  'Dieser Browser lässt die Seite nichts sichern. Verlass das private Fenster oder erlaube der Seite in den Einstellungen des Browsers, Daten zu speichern, und lade sie neu.'
export const OVERTAKEN: string =
  'In einem anderen Fenster ist eine neuere Fassung dieser Seite offen, darum kann diese nichts mehr sichern. Alles bisher Gesicherte ist da. Lade diese Seite neu, um weiterzumachen.'
export const NEWER: string =
  'Die Arbeit auf diesem Gerät wurde von einer neueren Fassung dieser Seite gesichert. Nichts wurde geändert. Lade die Seite neu, dann hast du diese Fassung.'
export const BLOCKED: string =
  'In einem anderen Fenster ist noch eine ältere Fassung dieser Seite offen. Nichts wurde geändert. Schließ jenes Fenster, dann lade dieses neu.'
export const CHANGED_ELSEWHERE: string =
  'Das wurde zur selben Zeit in einem anderen Fenster geändert, die letzte Änderung hier wurde nicht gesichert. Du siehst jetzt, was das andere Fenster gesichert hat; mach deine noch einmal, wenn du sie noch willst.'
export const UNSURE: string =
  'Der Browser hat seinen Speicher nicht erreicht, die letzte Änderung wurde nicht gesichert; alles davor ist es. Schließ andere Fenster und lade diese Seite neu.'
export const NOT_OPENED: string =
  'Der Browser öffnet seinen Speicher für diese Seite nicht. Erlaube der Seite in den Einstellungen des Browsers (Cookies und Websitedaten), Daten zu speichern, schließ ihre anderen Fenster und lade neu.'

export const STORE_WORDS: typeof EnglishStore = {
  unfit: (reason) =>
    `Das konnte nicht gesichert werden. ${reason} Ändere es und versuch es noch einmal.`,
  noPhoto: 'Dieses Foto ist hier nicht mehr gesichert. Füg es noch einmal hinzu.',
  unknownPhoto:
    'Dieses Foto gehört zu nichts, was hier gesichert ist. Bring erst sein Stück herüber, dann das Foto.',
  noJpeg: 'Das ist kein Foto, wie diese Seite sie aufhebt, darum wurde es nicht gesichert.',
}

export const LOCKED: string =
  'Deine Fotos sind verschlossen, darum wurde das nicht gesichert. Öffne sie mit deiner Passphrase, dann mach es noch einmal.'
export const WRONG_PASSPHRASE: string =
  'Diese Passphrase öffnet die Fotos nicht. Tipp sie so ein wie beim Festlegen; große und kleine Buchstaben zählen.'
export const LOCK_SPOILT: string =
  'Das Schloss der Fotos ist beschädigt, keine Passphrase öffnet es mehr.'

export const SEALED_WORDS: typeof EnglishSealed = {
  tooShort: (characters) =>
    `Eine Passphrase für Fotos hat mindestens ${characters} Zeichen. Vier oder fünf Wörter, die du nie hintereinander sagen würdest, sind gut.`,
  damaged:
    'Diese verschlossene Datei ist beschädigt oder nur zum Teil kopiert. Kopier sie noch einmal von dort, wo sie zuerst lag. Nichts wurde geändert.',
  wrong:
    'Diese Passphrase öffnet die Datei nicht, oder die Datei wurde verändert. Tipp sie so ein wie beim Speichern. Nichts wurde geändert.',
}

export const BACKUP_WORDS: typeof EnglishBackup = {
  notOurs:
    'Diese Datei ist keine Sicherung dieser Seite. Wähl eine, die „Alles in eine Datei sichern“ geschrieben hat; ihr Name endet auf .json. Nichts wurde geändert.',
  cutOff:
    'Diese Sicherung ist beschädigt oder nur zum Teil kopiert. Kopier sie noch einmal von dort, wo sie zuerst lag, und lies sie dann ein. Nichts wurde geändert.',
  fromLater:
    'Diese Sicherung wurde von einer neueren Fassung dieser Seite geschrieben. Lade die Seite neu, dann hast du diese Fassung, und lies sie dann ein. Nichts wurde geändert.',
  altered:
    'Diese Sicherung wurde nach dem Schreiben verändert oder beschädigt, ihren Zahlen ist nicht zu trauen. Wähl eine andere Kopie. Nichts wurde geändert.',
  lockedHere:
    'Deine Fotos sind verschlossen, und diese Datei enthält welche. Öffne sie mit deiner Passphrase und lies die Datei dann ein. Nichts wurde geändert.',
  copyOf: (name, day) => `${name} (Sicherung vom ${day})`,
}
