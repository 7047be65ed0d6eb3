import type { APP_WORDS as EnglishApp, NO_STORE_WORDS as EnglishNoStore } from './app.words.ts'

export const APP_WORDS: typeof EnglishApp = {
  title: (page) => `${page} · Tapetrue`,
  skip: 'Gleich zur Arbeit',
  notKept: 'Nicht gesichert.',
  doAgain: 'Noch einmal',
  agreeLead: 'Maßband und Probeteil sind sich einig.',
  good: 'Gut',
  elsewhereLead: 'In einem anderen Fenster geändert.',
  elsewhere: 'Was du hier siehst, hat jenes Fenster gesichert.',
  newerLead: 'Eine neuere Fassung liegt bereit.',
  newer:
    'Schreib zu Ende, was du gerade tippst; die Seite öffnet sich neu, und alles Gesicherte bleibt.',
  openNewer: 'Neuere Fassung öffnen',
  answered: (measurement, round, complaint) =>
    `Das Maßband sagt jetzt dasselbe wie Probeteil ${round} (${measurement}): Der Schnitt folgt der Zahl, und die Änderung für „${complaint}“, die dafür eingesprungen war, ist zurückgenommen.`,
}

export const NO_STORE_WORDS: typeof EnglishNoStore = {
  title: 'Nichts lässt sich sichern',
  heading: 'Hier lässt sich nichts sichern',
}
