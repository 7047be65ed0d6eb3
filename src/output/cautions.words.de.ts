import type { CAUTIONS as English } from './cautions.words.ts'

export const CAUTIONS: typeof English = [
  'Scheren, Klingen und Stecknadeln: Schneide von der Hand weg und zähle am Ende die Nadeln nach.',
  'Das Bügeleisen verbrennt Stoff und Haut. Probier seine Hitze an einem Rest.',
  'Ein weiter Ärmel bleibt hängen: Halte ihn fern von Flamme, Herd, laufender Maschine und Bohrer. Nicht für Arbeit in ihrer Nähe.',
  'Nicht für Kindernachtwäsche: Für weite Ärmel und offenes Feuer gelten eigene Vorschriften.',
  'Das sind Maße zum Nähen, keine medizinischen. Nichts davon sagt etwas über Gesundheit.',
  'Nähst du für andere, gehen die örtlichen Vorschriften und die Regeln des Handwerks vor.',
]
