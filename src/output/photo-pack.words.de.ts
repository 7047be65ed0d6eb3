import type { PACK_WORDS as English } from './photo-pack.words.ts'

export const PACK_WORDS: typeof English = {
  check: 'Mit 100 % drucken, nicht an die Seite angepasst. Miss nach:',
  dots: [
    'Punkte, 19 mm. Male alle kräftig in einer Farbe, die sonst fehlt.',
    'Nacken, Halspunkte, Schulter- und Brustpunkte, Taille, Hüfte.',
    'Hüfte: an der Seite, auf Höhe der stärksten Stelle des Gesäßes.',
    'Die Mitte zählt. Kleb sie flach auf, mit Hautklebeband.',
  ],
  card: 'Taschenkarte',
  cardMetric: '85,6 mm mal 54,0 mm',
  cardInches: '3 3/8 in mal 2 1/8 in',
  aboutCard: [
    'Taschenkarte, wenn kein Bogen hängen kann; so groß wie eine',
    'Bankkarte. An den Strichen ausschneiden, auf Pappe kleben.',
    'Im Foto tippst du die vier Ecken des schwarzen Bands an.',
  ],
}
