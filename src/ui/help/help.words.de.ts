import type { HELP_WORDS as English } from './help.words.ts'

export const HELP_WORDS: typeof English = {
  title: 'Wörter und Taschenkarte',
  about: 'Was die Fachwörter hier bedeuten, und eine Karte für den Stoffladen.',
  words: 'Wörter',
  count: (found, all) => `${found} von ${all}`,
  look: 'Ein Wort suchen',
  none: 'Kein Wort hier enthält das. Versuch ein kürzeres.',
  card: 'Taschenkarte',
  noNumbers: 'Hier stehen die bestätigten Zahlen aus dem Maßbuch.',
  rules: [
    'Zweimal messen, beim Ausatmen; das Maßband liegt an, es drückt nicht.',
    'Ein abgesteckter Kniff ist doppelter Stoff: vom Bruch bis zur Nadel ablesen, mal zwei.',
    'Eines ändern, nähen, wieder ansehen.',
    'Den Stoff vor dem Zuschnitt waschen. Fadenlauf längs der Webkante.',
    'Nadeln nie in den Mund; die Klinge nach jedem Schnitt schließen.',
  ],
  print: 'Karte drucken',
  guide: 'Die Anleitung führt ein Stück vom Foto bis genäht',
  others: 'Arbeit anderer, die in dieser Seite steckt:',
  licences: 'Lizenzen und Namen',
  end: '.',
}
