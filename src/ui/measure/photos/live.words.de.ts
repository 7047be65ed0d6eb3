import type { View } from '../../../capture/reading.ts'
import type {
  CardKind,
  LIVE_TROUBLE as EnglishTrouble,
  LIVE_WORDS as English,
  STREAM_WORDS as EnglishStream,
} from './live.words.ts'

const CARD: Readonly<Record<CardKind, string>> = { sheet: 'Der Bogen', card: 'Die Karte' }
const PLACE: Readonly<Record<View, string>> = {
  front: 'vorn in der Taille',
  side: 'an der Seite in der Taille, zur Kamera hin; dieser Arm geht nach vorn',
  back: 'hinten in der Taille',
}
const MUSLIN_STAND: Readonly<Record<View, string>> = {
  front: 'Geschlossen und gesteckt, wie du es beurteilst, Arme etwas abgespreizt.',
  side: 'Die Seite, die du beurteilst. Die Seitennaht im Bild.',
  back: 'Schau geradeaus, nicht über die Schulter: Drehen verzieht den Rücken.',
}
const HAND = 'Eine gehobene Hand startet das Zählen.'

export const LIVE_WORDS: typeof English = {
  hangs: (card, view) => `${CARD[card]} hängt ${PLACE[view]}. ${HAND}`,
  muslinHangs: (view) =>
    `${MUSLIN_STAND[view]} Wenn du den gedruckten Bogen nimmst, hängt er ${PLACE[view]}. ${HAND}`,
  threePhotos: 'Drei Fotos',
  muslin: (round) => `Probeteil ${round}`,
  sheetAndPerson: 'Bogen und Person gefunden.',
  personNoSheet: 'Person gefunden, kein Bogen.',
  use: 'Diese Fotos nehmen',
  keepWithRound: (round) => `Zu Runde ${round} legen`,

  standStill: 'Steh still.',
  good: 'Gut. Bleib so.',
  handDown: 'Hand runter. Steh still.',
  stay: 'Bleib so.',
  taken: {
    front: 'Vorn ist aufgenommen.',
    side: 'Die Seite ist aufgenommen.',
    back: 'Hinten ist aufgenommen.',
  },
  next: {
    front: 'Jetzt zur Kamera.',
    side: 'Jetzt die Seite.',
    back: 'Jetzt der Rücken.',
  },
  all: 'Alle sind aufgenommen.',

  picture: 'Bild der Kamera',
  headLine: 'Kopf unter dieser Linie',
  feetLine: 'Füße über dieser Linie',
  inHere: { sheet: 'Bogen hierhin', card: 'Karte hierhin' },

  tonesOn: 'Töne an',
  tonesOff: 'Töne aus',
  switchOff: 'Die Töne sind an. Ausschalten',
  switchOn: 'Die Töne sind aus. Einschalten',
  otherCamera: 'Andere Kamera',
  leave: 'Verlassen',
  withoutHints: 'Ohne Hinweise weiter',
  hintsComing: 'Die Hinweise sind unterwegs.',
  startAgain: 'Kamera neu starten',
  stopCount: 'Zählen anhalten',
  countDown: 'Von 10 herunterzählen',
  leavingKeeps: 'Was aufgenommen ist, bleibt beim Verlassen.',

  stop: 'Halt:',
  isTaken: 'Aufgenommen.',
  takeAgain: 'Noch einmal',
  takeThatAgain: {
    front: 'Das Foto von vorn noch einmal aufnehmen',
    side: 'Das Foto von der Seite noch einmal aufnehmen',
    back: 'Das Foto von hinten noch einmal aufnehmen',
  },
  now: 'Jetzt.',
  still: 'Fehlt noch.',
}

export const LIVE_TROUBLE: typeof EnglishTrouble = {
  noHints: 'Die Hinweise sind nicht angekommen. Die Taste zum Herunterzählen nimmt ohne sie auf.',
  away: 'Die Kamera wurde freigegeben, weil diese Seite nicht zu sehen war. Starte sie neu.',
  lost: 'Die Kamera ist ausgegangen. Sieh nach Stecker oder Abdeckung und starte sie neu.',
  noPicture: 'Die Kamera gab kein Bild. Stell dich noch einmal hin.',
}

export const STREAM_WORDS: typeof EnglishStream = {
  notAllowed:
    'Die Kamera ist für diese Seite nicht erlaubt. Erlaube sie neben der Adresse der Seite und versuch es noch einmal.',
  notFound: 'Dieses Gerät zeigt keine Kamera. Schließ eine an und versuch es noch einmal.',
  notReadable:
    'Die Kamera ist nicht angegangen. Vielleicht hält sie ein anderes Programm; schließ es und versuch es noch einmal.',
  unsafe: 'Diese Seite erreicht keine Kamera, weil sie nicht über https geöffnet wurde.',
  unknown: 'Die Kamera ist nicht angegangen. Versuch es noch einmal.',
  chooseInstead: 'Oder wähl Fotos, die du hast; nichts geht verloren.',
}
