import type { MARKER_SHEET_WORDS as English } from './marker-sheet.words.ts'

export const MARKER_SHEET_WORDS: typeof English = {
  thisHalf: ['diese Hälfte', 'ins Foto'],
  fold: 'An den Strichen nach hinten falten.',
  print: 'Mit 100 % drucken, nicht an die Seite anpassen.',
  check: (millimetres) => `Mit dem Maßband prüfen: Dieser Balken ist ${millimetres} mm lang.`,
  advice: [
    'Länger oder kürzer: neu drucken. Der Bogen gibt den Fotos den Maßstab.',
    'Nimm weißes Papier. Kleb die Faltung zu, damit der Bogen flach hängt.',
    'Obere Hälfte flach an die Taillenschnur, das ganze Quadrat im Bild.',
    'Halte den weißen Rand frei von Nadeln, Fingern und Schnur.',
  ],
}
