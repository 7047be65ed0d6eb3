import type { HINT_WORDS as English } from './hints.words.ts'

export const HINT_WORDS: typeof English = {
  nobody: 'Tritt ins Bild.',
  stepBack: 'Tritt zurück.',
  feet: 'Füße ins Bild: etwas zurück oder Kamera nach unten.',
  head: 'Kopf ins Bild: etwas zurück oder Kamera nach oben.',
  nearer: 'Komm näher.',
  goLeft: 'Ein Schritt nach links.',
  goRight: 'Ein Schritt nach rechts.',
  middle: 'Stell dich in die Mitte.',
  faceCamera: 'Schau zur Kamera.',
  turnSide: 'Dreh die Seite zur Kamera.',
  turnBack: 'Dreh den Rücken zur Kamera.',
  armsAway: 'Arme etwas abspreizen.',
  armsDown: 'Arme tiefer, etwas abgespreizt.',
  handDown: 'Hand wieder runter.',
}
