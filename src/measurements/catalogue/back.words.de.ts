import type { BACK_WORDS as English } from './back.words.ts'

export const BACK_WORDS: typeof English = {
  napeToWaist: {
    from: 'der Nackenpunkt',
    to: 'die Schnur in der Taille',
    words: 'In der hinteren Mitte vom Nackenpunkt bis zur Schnur, auf der Haut.',
    alone:
      'Beuge den Kopf vor und taste nach dem Wirbel, der hervortritt: Das ist der Nackenpunkt. Halte den Kopf wieder aufrecht. Kleb das Nullende mit Pflaster darauf und lass das Maßband hängen. Stell dich mit dem Rücken an eine Türkante, damit es auf der Haut liegt. Greif es mit zwei Fingern dort, wo es auf die Schnur trifft.',
    moves: 'die Länge des Rückenteils',
  },
  sideNeckOverBladeToWaist: {
    from: 'der Halspunkt',
    to: 'die Schnur in der Taille, hinten',
    words:
      'Vom Halspunkt über die höchste Stelle des Schulterblatts gerade hinunter bis zur Schnur.',
    alone:
      'Kleb das Nullende mit Pflaster auf den Halspunkt, wirf das Maßband über die Schulter und lass es über das Schulterblatt hängen. Lies es an der Schnur ab, auf einem Foto oder mit zwei Spiegeln.',
    moves: 'die Balance im Rücken',
  },
  napeToArmpitLevel: {
    from: 'der Nackenpunkt',
    to: 'die Achselhöhe, in der hinteren Mitte',
    words: 'In der hinteren Mitte hinunter bis zu einer Waagerechten, die beide Achseln berührt.',
    alone:
      'Halte einen Streifen Pappe waagerecht unter beide Arme, quer über den Rücken. Lass das Maßband vom Nackenpunkt hängen und lies es an der Oberkante der Pappe auf einem Foto ab.',
    moves: 'die Tiefe des Armlochs',
  },
}
