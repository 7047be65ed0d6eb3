import type { View } from '../../capture/reading.ts'
import { ZONE_WORDS } from '../../rounds/zones.words.de.ts'
import type {
  CLOSE_UP_WORDS as EnglishCloseUp,
  CLOTH_WORDS as EnglishCloth,
  MARK_WORDS as EnglishMark,
  MATCHED_WORDS as EnglishMatched,
  READING_WORDS as EnglishReading,
  SLOT_WORDS as EnglishSlot,
  TAKE_WORDS as EnglishTake,
  TRACE_WORDS as EnglishTrace,
  VIEW_KEYS as EnglishViewKeys,
  VIEW_SHOWN as EnglishViewShown,
  WAY_WORDS as EnglishWays,
} from './photos.words.ts'

export const VIEW_KEYS: typeof EnglishViewKeys = { front: 'vorn', side: 'Seite', back: 'hinten' }
const FROM: Readonly<Record<View, string>> = {
  front: 'von vorn',
  side: 'von der Seite',
  back: 'von hinten',
}
export const VIEW_SHOWN: typeof EnglishViewShown = { ...FROM, closeUp: 'Nahaufnahme' }

export const SLOT_WORDS: typeof EnglishSlot = {
  title: 'Am Körper',
  sameScale: 'gleicher Maßstab',
  view: 'Ansicht',
  howTheyLie: 'Wie die Fotos liegen',
  paperOverFace: 'Papier über dem Gesicht',
  seen: (round, view) => `Probeteil ${round} ${FROM[view]}, mit dem, was am Stoff gesehen wurde`,
  liftPaper: 'Papier über dem Kopf. Heb es bis zum Hals an.',
  paperDownTo: (hundredths) => `bis ${hundredths} Prozent des Fotos hinunter`,
  stopReading: 'Lesen anhalten',
  asTaken:
    'So, wie sie aufgenommen sind, unterscheiden sich die beiden Fotos in Maßstab und Lage: Sieh auf die Falten, nicht auf die Größen.',
  toOneScale: 'Beide Fotos in einen Maßstab bringen',
  lookFor: 'Falten und gezeichnete Linien suchen',
  coverRead:
    'Den Kopf in den Bildpunkten abdecken, sobald er gefunden ist; aufdecken lässt er sich dann nicht mehr',
  notTogether: 'Nicht zusammengebracht.',
  notRead: 'Nicht gelesen.',
  markByHand: 'Dieselben zwei Stellen von Hand markieren',
  traceLine: 'Eine Linie des Probeteils nachziehen',
  others: 'Andere Fotos für diese beiden Probeteile',
  newPhotos: (round) => `Neue Fotos von Probeteil ${round}`,
  stay: 'Fotos bleiben auf diesem Gerät. Wurde eines aus Dateien gewählt, kann es auch in einer Galerie oder einer Cloud liegen; sieh dort nach, wenn es verschwinden soll.',
  round: (number) => `Runde ${number}`,
  muslinFrom: (round, view) => `Probeteil ${round} ${FROM[view]}`,
  letGo: 'Dieses Foto löschen',
  letGoLabel: (view, round) => `Foto ${FROM[view]} von Runde ${round} löschen`,
  alsoWith: (rounds) =>
    `Es liegt auch bei ${rounds
      .map(({ number, elsewhere }) => `Runde ${number}${elsewhere ? ' eines anderen Stücks' : ''}`)
      .join(', ')}: Löschst du es, ist es auch dort weg.`,
  opened: 'Das Foto wird geöffnet.',
  removed: (day) =>
    `Foto entfernt am ${day}. Die Zahlen der Runde bleiben. Eine früher mit Fotos gespeicherte Datei kann es noch enthalten.`,
  notSewn: 'Noch nicht genäht. Sein Foto liegt dann hier.',
  add: (view, another) =>
    view === 'closeUp'
      ? another
        ? 'Weitere Nahaufnahme'
        : 'Nahaufnahme hinzufügen'
      : another
        ? `Anderes Foto ${FROM[view]}`
        : `Foto ${FROM[view]} hinzufügen`,
  ofMuslin: (round) => `von Probeteil ${round}`,
  opening: 'Das Foto wird geöffnet.',
  notKeptLead: 'Nicht gesichert.',
  notKept: 'Das Foto wurde nicht gesichert. Wähl es noch einmal.',
}

export const CLOSE_UP_WORDS: typeof EnglishCloseUp = {
  title: 'Nahaufnahmen',
  ofThe: 'Zeigt',
  onceSewn: 'Sobald das Probeteil genäht ist.',
  shows: (zone) => (zone ? ZONE_WORDS[zone] : 'Probeteil'),
  removed: (day) => `Foto entfernt am ${day}.`,
  alt: (round, shows) => `Probeteil ${round}, Nahaufnahme: ${shows}`,
  letGo: 'Löschen',
  letGoLabel: (shows) => `Nahaufnahme löschen: ${shows}`,
}

export const WAY_WORDS: typeof EnglishWays = {
  edge: 'Kante',
  over: 'darüber',
  blink: 'Wechsel',
  beside: 'daneben',
}

export const MATCHED_WORDS: typeof EnglishMatched = {
  edge: (before, after, view) =>
    `Probeteile ${before} und ${after} ${FROM[view]}, durch eine gerade Kante geteilt`,
  over: (before, after, view) => `Probeteil ${after} über Probeteil ${before}, ${FROM[view]}`,
  edgeBetween: (before, after) => `Gerade Kante zwischen Runde ${before} und Runde ${after}`,
  edgeAt: (before, hundredths) => `Runde ${before} bis ${hundredths} Prozent von links`,
  strength: (before, after) => `Wie deutlich Runde ${after} über Runde ${before} liegt`,
  inHundred: (hundredths) => `${hundredths} Prozent`,
  swap: 'Die beiden Fotos tauschen',
  hold: 'Halten zum Wechseln',
  byMarks:
    'Nach deinen zwei Marken ausgerichtet. Die Größen sind dadurch angeglichen und lassen sich nicht vergleichen.',
  noCard:
    'Keine Karte: Die Größen sind nach Schultern und Hüften angeglichen und lassen sich nicht vergleichen.',
  linedUp: (round, shoulders, hips) =>
    `Ausgerichtet nach ${round === undefined ? 'den Karten' : `der Karte von Runde ${round}`}, Schultern und Hüften; noch ${shoulders} Abstand an den Schultern und ${hips} an den Hüften.`,
  cardsDisagree: (hundredths) =>
    `Die beiden Karten nennen Maßstäbe, die ${hundredths} Prozent auseinanderliegen: Sieh auf die Falten, nicht auf die Größen.`,
}

export const MARK_WORDS: typeof EnglishMark = {
  places: ['Hals vorn oder hinten', 'Mitte des Saums'],
  about:
    'Setz die beiden Ringe in beiden Fotos auf dieselben zwei Stellen des Körpers oder des Probeteils, weit auseinander: Halsgrube und Saummitte eignen sich.',
  alt: (round) => `Probeteil ${round}, mit zwei Ringen`,
  keys: 'Pfeiltasten rücken ihn um ein Pixel des Fotos, mit Umschalttaste um zehn.',
  layOver: 'Auf diesen Marken übereinanderlegen',
  leave: 'Lassen',
}

export const TRACE_WORDS: typeof EnglishTrace = {
  muslin: 'Probeteil',
  round: (number) => `Runde ${number}`,
  line: 'Linie',
  lines: { bustLine: 'Brust', waistLine: 'Taille', hipLine: 'Hüfte', centre: 'Mitte' },
  upright: ['oberes Ende', 'unteres Ende'],
  level: ['linkes Ende', 'rechtes Ende'],
  keep: (line) => `${line} sichern`,
  kept: (line, round) => `Gesichert: ${line} von Probeteil ${round}.`,
  done: 'Fertig',
}

export const CLOTH_WORDS: typeof EnglishCloth = {
  folds: 'Falten, als Hinweis',
  lines: 'Linien auf dem Probeteil',
  muslin: (round) => `Probeteil ${round}`,
  notFromSide: 'Von der Seite werden keine Falten gesucht.',
  noFold: 'Es war keine Falte zu sehen, an der der Stoff zieht.',
  noPlace: 'Es war eine Linie zu sehen, die zu keiner Stelle unserer Tabelle passt.',
  fits: (place, complaints) => `${place}. Beobachtungen, die passen: ${complaints.join('; ')}.`,
  noLine:
    'Keine gezeichnete Linie gefunden. Zeichne Brust-, Taillen- und Hüftlinie und die Mitte mit Lineal und dunklem Stift auf das Probeteil, oder zieh sie hier nach.',
  line: 'Linie',
  asFar:
    'Links und rechts gelten für das Foto. Neigungen stimmen so weit, wie die Kamera waagerecht stand.',
  notFound: 'nicht gefunden',
  level: 'waagerecht',
  plumb: (degrees, right) => `${comma(degrees)}°, Fuß nach ${right ? 'rechts' : 'links'}`,
  tilted: (degrees, right) => `${comma(degrees)}°, ${right ? 'rechts' : 'links'} tiefer`,
  lies: (how, below, traced) =>
    `${how}${below === undefined ? '' : `, ${below} unter den Schultern`}${traced ? ', nachgezogen' : ''}`,
  readRight: (found, place, oneFalseIn) =>
    `Ein Hinweis, kein Urteil; du sagst, was du siehst. Auf gerechneten Testbildern fand es ${found} von 100 Falten, nannte bei ${place} von 100 Probeteilen die richtige Stelle unter den ersten zwei und zeichnete auf einem von ${oneFalseIn} glatten Probeteilen eine falsche Linie. An genähten Probeteilen wurde es noch nicht erprobt.`,
}
const comma = (degrees: number): string => degrees.toFixed(1).replace('.', ',')

export const TAKE_WORDS: typeof EnglishTake = {
  title: 'Hier aufnehmen',
  take: (round) => `Fotos von Probeteil ${round} aufnehmen`,
  about: (round) =>
    `Vorn, Seite und hinten in einem Zug, allein, mit Hinweisen und Countdown. Stell dich hin wie beim Probeteil davor, die Kamera gleich hoch. Sie gehen zu Runde ${round}; keines landet in einer Galerie.`,
  cover: 'In den gesicherten Fotos den Kopf abdecken',
  keeping: 'Die Fotos werden gesichert.',
  kept: (views, round) => `Bei Runde ${round} gesichert: ${list(views)}.`,
  uncovered: (view) =>
    `Im Foto ${FROM[view]} ließ sich der Kopf nicht abdecken. Es ist gesichert, das Papier liegt nur auf dem Bildschirm darüber.`,
  notKept: 'Ein Foto wurde nicht gesichert. Nimm es noch einmal auf.',
}
function list(views: readonly View[]): string {
  const shown = views.map((view) => FROM[view])
  const last = shown.at(-1) ?? ''
  return shown.length > 1 ? `${shown.slice(0, -1).join(', ')} und ${last}` : last
}

export const READING_WORDS: typeof EnglishReading = {
  fetching: 'Das Modell, das Schultern und Hüften findet, wird geholt: 13\u00a0MB, einmal.',
  reading: (at, of, round) => `Foto ${at} von ${of} wird gelesen: Runde ${round}.`,
  read: 'Die Fotos sind gelesen.',
  stopped: 'Angehalten. Was gelesen ist, bleibt; mach weiter, wann du magst.',
  failed:
    'Die Fotos konnten nicht gelesen werden: Das Modell kam nicht an, oder dieser Browser sperrt WebAssembly. Verbinde dich einmal und versuch es wieder. Bis dahin liegen die Fotos nebeneinander.',
  gone: 'Ein Foto ist verschlossen oder nicht in diesem Browser und kann nicht gelesen werden.',
}
