import type { View } from '../../capture/reading.ts'
import type {
  ARRIVED_WORDS as EnglishArrived,
  BRING_WORDS as EnglishBring,
  CODE_READ_WORDS as EnglishRead,
  CODE_SHOWN_WORDS as EnglishShown,
  COMPARED_WORDS as EnglishCompared,
  GOODS_WORDS as EnglishGoods,
  PICKED_WORDS as EnglishPicked,
  SEND_WORDS as EnglishSend,
  STEPS_WORDS as EnglishSteps,
} from './bring.words.ts'

export const BRING_WORDS: typeof EnglishBring = {
  title: 'Herüber\u00adbringen',
  about:
    'Fotos, ein Stück oder alles, direkt von einem deiner Geräte zum anderen: durch dein eigenes Netz, ohne Server.',
  exampleTitle: 'Auf dem Tisch liegt das Beispiel.',
  example: 'Räum es zuerst weg; was herübergebracht wird, gehört zu deiner eigenen Arbeit.',
  closedTitle: 'Geschlossen.',
  byFile:
    'Der Weg über eine Datei bleibt: an der Stange „Alles in eine Datei sichern“, sie per Kabel, Stick oder Teilen-Menü des Telefons hinübertragen und auf dem anderen Gerät „Datei einlesen“. Beide Wege fügen hinzu und überschreiben nie.',
  again: 'Neu beginnen',
  toRail: 'Zur Stange, für eine Datei',
  endThis: 'Das hier beenden',
  looking: 'Das andere Gerät wird gesucht',
  lookingAbout:
    'Beide Codes sind gelesen. Das dauert ein paar Sekunden; nach zwanzig gibt es auf und sagt, warum.',
  showTitle: 'Dieses zeigt zuerst',
  show: 'Nimm den größeren Bildschirm oder das Gerät ohne Kamera. Es zeigt ein Quadrat, das das andere liest.',
  showKey: 'Hier einen Code zeigen',
  readTitle: 'Dieses liest zuerst',
  read: 'Seine Kamera liest das Quadrat des anderen, dann zeigt es eine Antwort. Ohne Kamera wird der Code eingetippt.',
  readKey: 'Code des anderen lesen',
}

export const CODE_SHOWN_WORDS: typeof EnglishShown = {
  firstTitle: 'Lass das andere Gerät das lesen',
  first:
    'Öffne auf dem anderen Gerät dieselbe Seite und drücke „Code des anderen lesen“. Dann zeigt es eine Antwort.',
  readAnswer: 'Antwort lesen',
  answerTitle: 'Lass jetzt das erste Gerät diese Antwort lesen',
  answer: 'Drücke auf dem ersten Gerät „Antwort lesen“. Ist sie gelesen, zeigen beide vier Wörter.',
  notFound: 'Sagt es, dass die beiden sich nicht finden, beginne auch hier neu.',
  square: 'Der Code als Quadrat. Darunter steht er ausgeschrieben, für ein Gerät ohne Kamera.',
  hold: 'Halte die Kamera so, dass das Quadrat ihr Bild halb füllt. Stell den Bildschirm hell.',
  typeIt: 'Keine Kamera am anderen Gerät? Dort eintippen',
  groups: (count) =>
    `${count} Gruppen zu fünf. Groß oder klein, mit Leerzeichen oder ohne; die Buchstaben I, L, O und U kommen nicht vor, 1 und 0 sind also Ziffern. Ein Tippfehler wird in seiner Gruppe gefunden.`,
  inGroups: 'Der Code in Gruppen',
}

export const CODE_READ_WORDS: typeof EnglishRead = {
  firstTitle: 'Code des anderen Geräts lesen',
  answerTitle: 'Antwort des anderen Geräts lesen',
  orType: 'Oder tipp den Code ein, den das andere Gerät zeigt.',
  notTaken: 'Nicht genommen.',
  noCamera: 'Hier ist keine Kamera.',
  point: 'Richte sie auf das Quadrat am anderen Bildschirm, sodass es das halbe Bild füllt.',
  opening: 'Die Kamera wird geöffnet.',
  picture: 'Bild der Kamera',
  typed: 'Oder tipp den Code des anderen Geräts ein, in Gruppen zu fünf',
  nothingTyped: 'Noch ist nichts eingetippt.',
  take: 'Diesen Code nehmen',
  back: 'Zurück',
}

export const COMPARED_WORDS: typeof EnglishCompared = {
  title: 'Stehen diese vier Wörter auf beiden Bildschirmen?',
  words: 'Vier Wörter',
  why: 'Sie entstehen aus dem Geheimnis und aus beiden Geräten und sind auf jedem Gerät englisch, gleich in welcher Sprache es läuft. Sind es dieselben, in derselben Reihenfolge, steht niemand dazwischen.',
  same: 'Es sind dieselben',
  differ: 'Es sind andere',
  agreed: 'Hier bestätigt. Drücke jetzt am anderen Gerät dieselbe Taste.',
}

export const SEND_WORDS: typeof EnglishSend = {
  title: 'Was geht von hier hinüber?',
  joined: 'Verbunden',
  about:
    'Lass diese Seite auf beiden Geräten offen. Das andere kann ebenso etwas schicken; was es schickt, steht unten.',
  what: 'Was hinübergeht',
  photos: 'Fotos',
  oneGarment: 'Ein Stück',
  everything: 'Alles',
  garment: 'Stück',
  garmentAbout:
    'Das Stück mit allen Runden und das Maßbuch, aus dem es gezeichnet ist. Drüben wird es hinzugefügt; ist dasselbe Stück dort anders, hängt es als Kopie daneben.',
  everythingAbout:
    'Maßbuch, Stücke, Runden und Einstellungen. Drüben kommt alles zu dem dazu, was da ist; nichts wird überschrieben.',
  withPhotos: (count) => `mit den Fotos, die hier noch gesichert sind: ${count}`,
  busy: 'Gerade geht etwas hinüber.',
  choosePhoto: 'Wähl erst ein Foto.',
  noGarment: 'An der Stange hängt noch kein Stück.',
  send: 'Hinüberschicken',
  sending: 'Geht hinüber',
  arriving: 'Kommt an',
  stop: 'Schicken anhalten',
  enough: 'Nichts mehr annehmen',
  notSent: 'Nicht geschickt.',
  sentLead: 'Geschickt.',
  sent: 'Was aus jedem geworden ist, steht unten und auf dem anderen Bildschirm.',
  stoppedLead: 'Angehalten.',
  stopped:
    'Was ganz hinüberging, ist drüben. Schick dasselbe noch einmal, dann geht es weiter, wo es aufgehört hat.',
  far: (word, at, of, name) => `${word}, ${at} von ${of}: ${name}`,
  progress: (word, name) => `${word}: ${name}`,
  megabytes: (here, of) => `${mega(here)} von ${mega(of)} MB`,
}
const mega = (bytes: number): string => (bytes / 1e6).toFixed(1).replace('.', ',')

const FROM: Readonly<Record<View, string>> = {
  front: 'von vorn',
  side: 'von der Seite',
  back: 'von hinten',
}

export const PICKED_WORDS: typeof EnglishPicked = {
  about:
    'Vorn, Seite und hinten liegen drüben beim Messen bereit. Andere lassen sich als Dateien speichern. Ort, Zeit und Gerät werden aus einem Foto entfernt, bevor es geht.',
  choose: 'Fotos wählen',
  opening: 'Sie werden geöffnet.',
  shows: 'zeigt mich',
  views: FROM,
  other: 'etwas anderes',
  leaveOut: 'Weglassen',
  leaveOutLabel: (name) => `${name} weglassen`,
  notOpened: 'Nicht geöffnet.',
}

export const ARRIVED_WORDS: typeof EnglishArrived = {
  here: 'Hier angekommen',
  sent: 'Von hier geschickt',
  loose:
    'Fotos, die noch nicht gesichert sind, liegen nur auf dieser Seite, bis sie geschlossen wird. Die für das Messen warten dort auf dem Tisch; lies sie dort oder speichere sie als Dateien.',
  readThere: 'Beim Messen lesen',
  save: (name) => `${name} speichern`,
  photo: 'foto',
}

export const GOODS_WORDS: typeof EnglishGoods = {
  photo: (view, day) => `${view === 'closeUp' ? 'Nahaufnahme' : `Foto ${FROM[view]}`}, ${day}`,
  kept: 'Gesichert.',
  letGoThere: 'Es wurde dort schon gelöscht und bleibt es.',
  noJpeg: 'Das ist kein JPEG-Foto, darum wurde es nicht genommen.',
  inMeasure: (view) => `Es liegt beim Messen bereit, als Foto ${FROM[view]}.`,
  asFile: 'Es lässt sich als Datei speichern.',
  restored: (garments, rounds, copies) =>
    `Neu an der Stange: Stücke ${garments}, Runden ${rounds}. Die Maßbücher sind vereint; nichts wurde überschrieben.${
      copies.length > 0 ? ` Als Kopie daneben: ${copies.join(', ')}.` : ''
    }`,
}

export const STEPS_WORDS: typeof EnglishSteps = {
  title: 'So geht es',
  step: (at, of) => `Schritt ${at} von ${of}`,
  steps: [
    'Ein Gerät zeigt einen Code, das andere liest ihn.',
    'Das andere antwortet mit einem eigenen Code.',
    'Beide zeigen dieselben vier Wörter, und du sagst es auf beiden.',
    'Du wählst, was hinübergeht, von jeder Seite aus.',
  ],
  network:
    'Beide Geräte müssen in einem Netz sein, in dem Geräte miteinander sprechen dürfen: das WLAN zu Hause oder der Hotspot des Telefons, mit dem der Laptop verbunden ist. In Gastnetzen geht es meistens nicht. Das Internet wird nicht gebraucht.',
  secret:
    'Der Code enthält ein Geheimnis, das einmal gilt. Jedes Gerät beweist, dass es dieses kennt, bevor etwas hinübergeht; unterwegs ist alles verschlüsselt, und kein Server wird gefragt. Verlässt du diese Seite, schließt sich die Verbindung, und die Kamera geht aus.',
}
