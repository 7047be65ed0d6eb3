import type { EXAMPLE_WORDS as English } from './example.words.ts'

export const EXAMPLE_WORDS: typeof English = {
  name: 'Erfundenes Beispiel, ärmellose Bluse',
  cloth: 'gewaschener Nessel',
  notes: [
    'Mit langen Stichen genäht. Taille mit Gummiband markiert.',
    'Das Armloch liegt jetzt an, die Taille sitzt auf dem Gummiband.',
  ],
  notMade:
    'Das Beispiel ließ sich hier nicht aufhängen. An deiner Arbeit wurde nichts geändert; lade die Seite neu, um es noch einmal zu versuchen.',
  banner: 'Erfundenes Beispiel',
  lead: 'Das ist ein erfundenes Beispiel.',
  about:
    'Körper, Probeteile und Beobachtungen sind ausgedacht. Von dir ist nichts darin, und was du hier änderst, verschwindet mit ihm, wenn es abgenommen wird.',
  takeDown: 'Beispiel abnehmen',
}
