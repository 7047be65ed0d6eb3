import type {
  CLOTH_KIND_WORDS as Kinds,
  CRISP_WARNING as Crisp,
  DRAPE_WARNINGS as Warnings,
  DRAPE_WORDS as Drape,
} from './cloth-kind.words.ts'

const COTTON =
  'Wasch und trockne sie zweimal so, wie das Stück gewaschen wird: Baumwolle läuft auch später noch ein.'

export const CLOTH_KIND_WORDS: typeof Kinds = {
  lightCotton: { name: 'leichte, weiche Baumwolle', prepare: COTTON, mind: [] },
  crispCotton: { name: 'feste Baumwolle', prepare: COTTON, mind: [] },
  rayon: {
    name: 'Viskose',
    prepare: 'Wasch und trockne sie zweimal: Viskose läuft bei mehreren Wäschen weiter ein.',
    mind: [
      'Sie rutscht: Steck jede Handbreit eine Nadel und schneide auf einem Tisch, nie über seine Kante hinaus.',
    ],
  },
  silk: {
    name: 'Seide',
    prepare:
      'Wasch oder dämpfe sie so, wie das Stück behandelt wird. Wasser kann Flecken geben: Probier es an einer Ecke.',
    mind: [
      'Feine, neue Nadel und feine Stecknadeln: Eine stumpfe zieht Fäden.',
      'Bügle von der linken Seite.',
    ],
  },
  linen: {
    name: 'Leinen',
    prepare: 'Wasch und trockne es so, wie das Stück gewaschen wird, und bügle es feucht.',
    mind: ['Es franst aus: Versäubere jede Kante, bevor die nächste Naht sie kreuzt.'],
  },
}

export const CRISP_WARNING: typeof Crisp =
  'Feste Baumwolle steht vom angeschnittenen Ärmel ab, statt zu fallen. Mach erst die Fallprobe.'

export const DRAPE_WORDS: typeof Drape = {
  falls: 'Er fällt in weichen Falten: richtig für einen angeschnittenen Ärmel.',
  between: 'Er fällt in breiten Falten: Der Ärmel wird ein wenig abstehen.',
  stands: 'Er steht: Nimm einen weicheren Stoff für einen angeschnittenen Ärmel.',
}

export const DRAPE_WARNINGS: typeof Warnings = {
  falls: undefined,
  between:
    'Bei der Fallprobe fiel der Stoff in breiten Falten: Der angeschnittene Ärmel wird ein wenig abstehen.',
  stands:
    'Bei der Fallprobe stand der Stoff: Der angeschnittene Ärmel wird abstehen, statt zu fallen. Nimm einen weicheren Stoff, oder sei dir vor dem Zuschneiden darüber im Klaren.',
}
