import { DATE_WORDS } from '../../../units/dates.words.de.ts'
import type {
  CHOOSE_WORDS as EnglishChoose,
  DESK_WORDS as EnglishDesk,
  ESTIMATE_TABLE_WORDS as EnglishEstimates,
  HAND_ON_WORDS as EnglishHandOn,
  KEPT_WORDS as EnglishKept,
  KeptView,
  PHOTOS_WORDS as English,
  SCALE_BY_WORDS as EnglishScale,
  VIEW_TABLE_WORDS as EnglishView,
} from './photos.words.ts'

export const PHOTOS_WORDS: typeof English = {
  title: 'Fotos',
  readCount: (read) => `${read} von 3 gelesen`,
  ifYouLike: 'wenn du magst',
  about:
    'Fotos geben jeder Länge eine Zahl für den Anfang. Dein Maßband bestätigt sie. Die Fotos verlassen dieses Gerät nur, wenn du es selbst tust.',
  here: 'Hier aufnehmen',
  takeHere: 'Fotos hier aufnehmen',
  hereAbout:
    'Vorn, Seite und hinten in einem Zug, allein, mit Hinweisen und Herunterzählen. Die Bilder bleiben auf dieser Seite; keines landet in einer Galerie.',
  tapeMeanwhile: 'Du kannst inzwischen messen.',
  stopReading: 'Lesen anhalten',
  read: 'Fotos lesen',
  nothingSeen: 'Noch war keine Länge zu sehen. Bring zuerst die Fotos in Ordnung.',
  accept: 'Diese Punkte übernehmen',
  accepted: 'Punkte übernommen.',
  notCovered:
    'Der Kopf ließ sich nicht abdecken, darum wurden die Fotos nicht behalten. Die Zahlen stehen im Maßbuch. Schließ andere Tabs und übernimm sie noch einmal.',
}

export const HAND_ON_WORDS: typeof EnglishHandOn = {
  title: 'Auf einem anderen Gerät lesen',
  about:
    'Mit dem Handy aufgenommen, am Laptop gelesen: Gib die Fotos als Dateien weiter und wähl sie dort unter Messen, oder',
  bring: 'bring sie direkt hinüber',
  end: '. Sie gehen so, wie sie aufgenommen sind, ohne Ort und Zeit und mit unbedecktem Kopf.',
  save: 'Fotos als Dateien speichern',
  files: { front: 'foto-vorn.jpg', side: 'foto-seite.jpg', back: 'foto-hinten.jpg' },
}

export const CHOOSE_WORDS: typeof EnglishChoose = {
  title: 'Oder Fotos wählen, die du hast',
  about:
    'Ein Bild aus der Kamera-App des Handys landet in der Galerie und oft in einer Kopie in der Cloud; sieh dort nach, wenn es weg soll. Hier gewählt, geht es nirgends sonst hin. Fotos auf deinem Handy kannst du',
  bring: 'von dort herüberholen',
  end: '.',
  opening: (name) => `${name} wird geöffnet`,
  notOpened: (name) => `${name} wurde nicht geöffnet.`,
  none: 'Keines gewählt.',
}

export const SCALE_BY_WORDS: typeof EnglishScale = {
  label: 'Was den Maßstab gibt',
  ways: {
    sheet: 'Unser gedruckter Bogen',
    id1: 'Karte im Bankformat',
    a4: 'Leeres A4',
    letter: 'Leeres US-Letter',
    own: 'Eigenes Rechteck',
  },
  hangs:
    'Es hängt oder liegt flach in der Hand, gerade zur Kamera; du tippst auf jedem Foto seine vier Ecken an.',
  sides: ['Eine Seite', 'Andere Seite'],
}

export const DESK_WORDS: typeof EnglishDesk = {
  opened: {
    front: 'Foto von vorn geöffnet.',
    side: 'Foto von der Seite geöffnet.',
    back: 'Foto von hinten geöffnet.',
  },
  takenHere: 'Hier aufgenommen',
  onTable: (count) => `${count} von 3 hier aufgenommen, auf dem Tisch.`,
  opening: 'Ein Foto wird gerade geöffnet.',
  allRead: 'Alle gewählten Fotos sind gelesen.',
  chooseFirst: 'Wähl zuerst ein Foto.',
  bothSides: 'Schreib zuerst beide Seiten des Rechtecks auf.',
  tapFirst: {
    front: 'Tipp zuerst auf dem Foto von vorn die vier Ecken von Karte oder Papier an.',
    side: 'Tipp zuerst auf dem Foto von der Seite die vier Ecken von Karte oder Papier an.',
    back: 'Tipp zuerst auf dem Foto von hinten die vier Ecken von Karte oder Papier an.',
  },
  fetching: 'Das Modell, das Nacken und Taille findet, wird geholt: 13\u00a0MB, einmalig.',
  stopped: 'Angehalten. Nichts ist verloren; lies sie, wann du magst.',
  reading: {
    front: 'Das Foto von vorn wird gelesen.',
    side: 'Das Foto von der Seite wird gelesen.',
    back: 'Das Foto von hinten wird gelesen.',
  },
  done: 'Fotos gelesen.',
  failed:
    'Die Fotos ließen sich nicht lesen: Das Modell kam nicht ganz an, oder dieser Browser sperrt WebAssembly. Geh einmal online und lies sie noch einmal. Das Maßbuch geht auch ohne Fotos.',
}

export const VIEW_TABLE_WORDS: typeof EnglishView = {
  inView: 'Foto auf dem Tisch',
  corners: ['Oben links', 'Oben rechts', 'Unten rechts', 'Unten links'],
  tap: {
    sheet: (next) => tapCorners('des Bogens', next),
    id1: (next) => tapCorners('der Karte', next),
    a4: (next) => tapCorners('des Papiers', next),
    letter: (next) => tapCorners('des Papiers', next),
    own: (next) => tapCorners('des Rechtecks', next),
  },
  cornersSet: 'Vier Ecken sind gesetzt. Zieh einen Ring zurecht.',
  withPoints: {
    front: 'Ansicht von vorn, mit ihren Punkten',
    side: 'Ansicht von der Seite, mit ihren Punkten',
    back: 'Ansicht von hinten, mit ihren Punkten',
  },
  forCorners: {
    front: 'Ansicht von vorn, für die Ecken',
    side: 'Ansicht von der Seite, für die Ecken',
    back: 'Ansicht von hinten, für die Ecken',
  },
  arrows: 'Pfeiltasten schieben ihn um ein Pixel des Fotos, mit Umschalt um zehn.',
  drag: 'Zieh an einem Ring, um einen Punkt zu verschieben; die Zahlen folgen.',
  setFour: 'Vier Ringe zum Ziehen setzen',
  tapAgain: 'Ecken neu antippen',
  guess: (name) => `${name}, geschätzt`,
  covered: 'abgedeckt',
  coveredAndKept: 'Kopf abgedeckt, auch auf dem behaltenen Foto',
  paperOver: 'Papier über dem Kopf',
  sheetFound: 'Gedruckter Bogen gefunden.',
  cardFound: 'Karte gefunden.',
  personFound: 'Person gefunden.',
  missing: (point, why) => `${point}: ${why}`,
}
const tapCorners = (whose: string, next: string): string =>
  `Tipp die Ecken ${whose} an, im Uhrzeigersinn von oben links. Jetzt: ${next.toLowerCase()}.`

export const ESTIMATE_TABLE_WORDS: typeof EnglishEstimates = {
  about: (unit) => `In neun von zehn Fällen liegt das Maßband innerhalb von ±. Alles in ${unit}.`,
  length: 'Länge',
  camera: 'Kamera sagt',
  checks: (count) =>
    `${count} ${count === 1 ? 'Prüfung' : 'Prüfungen'} fürs Maßband: Umfänge und die Breiten und Tiefen, aus denen sie kommen`,
  check: 'Prüfung',
  unseen: (count) => `${count} nicht gesehen, und warum`,
}

export const KEPT_WORDS: typeof EnglishKept = {
  gone: 'Die Fotos sind von diesem Gerät gelöscht.',
  goneNumbers:
    'Die Zahlen bleiben im Maßbuch. Eine Datei, die du vorher mit Fotos gespeichert hast, enthält sie noch.',
  stay: 'Die Fotos bleiben auf diesem Gerät.',
  stayUntil: 'Du kannst sie hier jederzeit löschen.',
  guesses: 'Die Zahlen der Kamera stehen als Schätzungen im Maßbuch. Miss jede nach.',
  list: (list) => `Auf diesem Gerät behalten: ${list.join('; ')}.`,
  one: (view, on) => `${KEPT_VIEWS[view]}, ${DATE_WORDS.day(on)}`,
  letGo: 'Zahlen behalten, Fotos löschen',
  keep: 'Fotos auf diesem Gerät behalten',
}
const KEPT_VIEWS: Readonly<Record<KeptView, string>> = {
  front: 'von vorn',
  side: 'von der Seite',
  back: 'von hinten',
  closeUp: 'Nahaufnahme',
}
