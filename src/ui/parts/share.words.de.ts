import type { SHARE_WORDS as English } from './share.words.ts'

export const SHARE_WORDS: typeof English = {
  everything: 'Alles teilen …',
  garment: 'Teilen …',
  garmentLabel: (name) => `${name} teilen …`,
  photos: 'Fotos teilen …',
  pdf: 'PDF teilen …',
  readyLead: 'Bereit zum Teilen.',
  ready: 'Das hat gedauert, darum will der Browser, dass du dieselbe Taste noch einmal drückst.',
  refusedLead: 'Nicht geteilt.',
  refused:
    'Der Browser hat es nicht weitergereicht. Speichere es stattdessen als Datei und schick diese.',
}
