import type { ACROSS_WORDS as English } from './across.words.ts'

const LEFT_CREASE = 'der linke Armansatz, auf halber Höhe des Armlochs'
const RIGHT_CREASE = 'der rechte Armansatz, auf derselben Höhe'

export const ACROSS_WORDS: typeof English = {
  acrossBack: {
    from: LEFT_CREASE,
    to: RIGHT_CREASE,
    words:
      'Waagerecht über den Rücken von Armansatz zu Armansatz, auf halber Höhe zwischen Schulter und Achsel.',
    alone:
      'Greif nach hinten und kleb auf jeden Armansatz einen Streifen Pflaster, dann lass die Arme hängen. Leg das Maßband vom einen zum anderen, halte es mit Klammern und lies es auf einem Foto ab.',
    moves: 'die Breite des Rückenteils',
  },
  acrossChest: {
    from: LEFT_CREASE,
    to: RIGHT_CREASE,
    words: 'Waagerecht von Armansatz zu Armansatz, vorn oberhalb der Brust.',
    alone:
      'Zeichne beide Armansätze bei hängenden Armen mit einem auswaschbaren Stift an. Leg das Maßband dazwischen, lies im Spiegel ab.',
    moves: 'die Breite des Vorderteils',
  },
}
