import type { FLAT_WORDS as English } from './flat.words.ts'

const SMOOTH =
  'Schließ das Stück, leg es auf einen Tisch und streich es von der Mitte nach außen glatt, ohne zu dehnen. '

export const FLAT_WORDS: typeof English = {
  flatBustWidth: {
    from: 'die eine Seitennaht, direkt unter dem Armloch',
    to: 'die andere Seitennaht, auf derselben Höhe',
    words: 'Gerade von Seitennaht zu Seitennaht, direkt unter den Armlöchern.',
    alone: `${SMOOTH}Leg das Lineal quer unter die Armlöcher.`,
    moves: 'die gewünschte Mehrweite an der Brust',
  },
  flatWaistWidth: {
    from: 'die eine Seitennaht, in der Taille',
    to: 'die andere Seitennaht, auf derselben Höhe',
    words: 'Gerade von Seitennaht zu Seitennaht, wo das Stück in deiner Taille sitzt.',
    alone: `${SMOOTH}Zieh es vorher an und markiere die Taille mit einer Stecknadel; leg das Lineal dort quer an.`,
    moves: 'die gewünschte Mehrweite in der Taille',
  },
  flatHemWidth: {
    from: 'die eine Seitennaht, am Saum',
    to: 'die andere Seitennaht, am Saum',
    words: 'Am Saum entlang von Seitennaht zu Seitennaht.',
    alone: `${SMOOTH}Lass das Maßband der Saumkante folgen.`,
    moves: 'die gewünschte Saumweite',
  },
  flatBackLength: {
    from: 'die Halsnaht, hintere Mitte',
    to: 'der Saum, hintere Mitte',
    words: 'In der hinteren Mitte von der Halsnaht bis zum Saum.',
    alone: `${SMOOTH}Der Rücken liegt oben. Leg das Maßband in der Mitte hinunter.`,
    moves: 'die gewünschte Länge',
  },
}
