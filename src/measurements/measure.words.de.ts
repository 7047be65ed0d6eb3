import type { SOURCE_WORDS as English } from './measure.words.ts'

export const SOURCE_WORDS: typeof English = {
  ownTape: 'Wiederholbarkeit eines allein gehaltenen Maßbands; Handwerksbrauch, ohne Quelle',
  observer:
    'zulässiger Fehler geübter Messender, ANSUR-II-Handbuch NATICK/TR-11/017, Anhang G, so zitiert in einer öffentlichen Prüfnotiz',
  toOurWaist: 'bis zu unserer Taille',
}
