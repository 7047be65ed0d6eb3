import type { CAUTIONS as English } from './cautions.words.ts'

export const CAUTIONS: typeof English = [
  'Scheren, Klingen und Stecknadeln: Schneide von der Hand weg und zähle die Nadeln zurück.',
  'Das Bügeleisen verbrennt Stoff und Haut. Probiere seine Hitze an einem Rest.',
  'Ein weiter Ärmel bleibt hängen: Halte ihn fern von Flamme, Herd, drehender Maschine und Bohrer. Nicht für Arbeit in ihrer Nähe.',
  'Nicht für Nachtwäsche von Kindern: Für lose Ärmel und offenes Feuer gelten eigene Gesetze.',
  'Das sind Nähmaße, keine medizinischen. Nichts hier misst Gesundheit.',
  'Wo du für andere nähst, gehen örtliche Regeln und zugelassene Betriebe vor.',
]
