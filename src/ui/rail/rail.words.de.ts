import type {
  CARE_WORDS as EnglishCare,
  CARRY_WORDS as EnglishCarry,
  FIRST_WORDS as EnglishFirst,
  HUNG_WORDS as EnglishHung,
  RAIL_WORDS as EnglishRail,
} from './rail.words.ts'

export const RAIL_WORDS: typeof EnglishRail = {
  title: 'An der Stange',
  about:
    'Tapetrue zeichnet deine Blusen und Kleider aus deinen eigenen Maßen, verbessert sie Probeteil um Probeteil und sagt jede Linie so, dass Lineal und Bleistift genügen.',
  notShown: (names) => `Nicht gezeigt: ${names.join(', ')}.`,
  notCome:
    'Der Teil, der sie zeichnet, kam nicht an. Nichts ist verloren; öffne die Seite neu, wenn ein Netz da ist.',
  freeHook: 'Ein freier Haken',
  newTag: 'neu',
  hangBlouse: 'Bluse aufhängen',
  measureFirst: 'Zuerst messen',
  another: 'Ein anderes Stück aufhängen',
  hang: 'Aufhängen',
  hangLabel: (garment) => `Aufhängen: ${garment}`,
  outside: 'Vorerst nicht dabei: Kragen, Futter, Taschen und Maschenware.',
  takenOff: (count) => `Von der Stange genommen: ${count}`,
  hangAgain: 'Wieder aufhängen',
}

export const FIRST_WORDS: typeof EnglishFirst = {
  measureTitle: 'Jetzt messen',
  measure:
    'Drei Fotos geben erste Zahlen, dein Maßband bestätigt sie. Ohne Kamera reicht das Maßband allein. Etwa eine halbe Stunde.',
  measureKey: 'Jetzt messen',
  numbersTitle: 'Ich habe meine Maße',
  numbers:
    'Tipp sie ins Maßbuch, in Zentimetern oder Zoll, jedes so, wie du es zweimal abgelesen hast. Etwa zehn Minuten.',
  numbersKey: 'Maße eintippen',
  lookTitle: 'Erst ansehen',
  look: 'Eine erfundene Bluse mit zwei fertigen Probeteilen zum Durchgehen. Sie lässt sich spurlos wieder abnehmen.',
  lookKey: 'Beispiel ansehen',
  lookTag: 'schau',
  beingDrafted: 'Es wird gezeichnet.',
  exampleDrafted: 'Das Beispiel wird gezeichnet.',
  notHung: 'Nicht aufgehängt.',
}

export const HUNG_WORDS: typeof EnglishHung = {
  name: 'Name',
  keepName: 'Namen sichern',
  rename: 'Umbenennen',
  renameLabel: (name) => `${name} umbenennen`,
  save: 'In eine Datei sichern',
  saveLabel: (name) => `In eine Datei sichern: ${name}`,
  takeOff: 'Von der Stange nehmen',
  takeOffLabel: (name) => `Von der Stange nehmen: ${name}`,
  actLabel: (act, name) => `${act}: ${name}`,
  guess: 'etwa',
  draft: 'Schnitt',
  round: (number) => `${number}.`,
  notTaped: (count) => (count === 1 ? 'Ein Maß fehlt noch' : `${count} Maße fehlen noch`),
  stillToTape: (names, more) =>
    `Noch zu messen: ${names.join(', ')}${more ? ' und andere' : ''}. Vorher wird nichts zugeschnitten.`,
  tape: (count) => (count === 1 ? 'Ein Maß nehmen' : `${count} Maße nehmen`),
  drafted: 'Gezeichnet, noch nicht auf Papier',
  beingDrawn: (round) => `Runde ${round} wird gezeichnet`,
  asksForMore:
    'Ein Probeteil lässt sich nähen. Bevor Stoff zugeschnitten wird, verlangt die Prüfung mehr.',
  proved: 'Jede Prüfung ist bestanden. Das Probeteil kann aufs Papier.',
  putOnPaper: 'Probeteil zu Papier bringen',
  onTable: (round) => `Runde ${round} liegt auf dem Tisch`,
  wentOnPaper: (round, day) =>
    `Probeteil ${round} kam am ${day} aufs Papier. Näh es, trag es, dann sag, was du siehst.`,
  sayWhatYouSee: 'Sagen, was du siehst',
}

export const CARRY_WORDS: typeof EnglishCarry = {
  begin: (garment, count) =>
    `Das nächste Stück mit dem beginnen, was „${garment}“ gelehrt hat: ${count === 1 ? 'Diese Änderung kommt' : `Diese ${count} Änderungen kommen`} von deinem Körper.`,
  stays:
    'Mehrweite, Ausschnitt, Saum und Ärmel bleiben bei jenem Stück. Wofür das neue keinen Platz hat, fällt weg; jede Änderung lässt sich bei der Anprobe zurücknehmen.',
}

export const CARE_WORDS: typeof EnglishCare = {
  title: 'Bevor du anfängst',
  cautions: [
    'Schließ die Klinge eines Cutters oder Rollschneiders nach jedem Schnitt und schneide von dir weg.',
    'Nadeln nie in den Mund; zähl sie, bevor du ein Probeteil anziehst.',
    'Maßband oder Schnur nie fest um den Hals binden. Kinder nie mit beidem allein lassen.',
    'Trockene Hände am Bügeleisen, und danach den Stecker ziehen.',
    'Weite Ärmel bleiben hängen: weg von Flamme, Herd und laufender Nadel.',
    'Der weite Schnitt ist nicht für Kindernachtwäsche.',
    'Das ist ein Werkzeug zum Schneidern und kein medizinisches. Sagen örtliche Vorschriften oder die Regeln des Handwerks etwas anderes, gehen sie vor.',
  ],
}
