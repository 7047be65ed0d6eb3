import type { EASE_BAND_WORDS as English } from './ease.words.ts'

export const EASE_BAND_WORDS: typeof English = {
  fittedBodice: { words: 'anliegendes Oberteil', source: 'eine öffentliche metrische Tabelle' },
  shirt: { words: 'Hemd', source: 'eine öffentliche metrische Tabelle' },
  blouse: {
    words: 'Bluse, Merkblatt einer Hochschule',
    source: 'New Mexico State University, Circular C-228',
  },
  costume: {
    words: 'Oberteil aus einem Kostümlehrbuch',
    source: 'ein Lehrbuch für Kostümschnitte aus den 1960er Jahren',
  },
}
