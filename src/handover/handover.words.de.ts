import type { CODE_WORDS as EnglishCode, SAME_SIDE as EnglishSide } from './handover.words.ts'

export const CODE_WORDS: typeof EnglishCode = {
  foreign:
    'Das ist kein Code dieser Seite. Richte die Kamera auf das Quadrat am anderen Gerät, wo „Herüberbringen“ offen ist.',
  cutShort: 'Ein Teil dieses Codes fehlt. Kopier ihn ganz, von der ersten bis zur letzten Gruppe.',
  another:
    'Dieser Code antwortet auf einen anderen. Lass das andere Gerät den Code lesen, der jetzt hier steht.',
  group: (group, text) =>
    `Gruppe ${group} (${text}) passt nicht. Vergleiche sie mit dem anderen Bildschirm und tipp sie noch einmal ein.`,
}
export const SAME_SIDE: typeof EnglishSide = {
  offer:
    'Beide Geräte zeigen einen ersten Code. Wähl auf einem davon stattdessen „Code des anderen lesen“.',
  answer:
    'Das ist eine Antwort, und hier wurde noch nichts gefragt. Wähl auf einem der Geräte „Hier einen Code zeigen“.',
}

export const WRONG_SECRET: string =
  'Das andere Gerät kennt das Geheimnis dieses Codes nicht, darum ging nichts hin oder her. Beginne auf beiden Geräten neu.'
export const OUT_OF_TURN: string =
  'Das andere Gerät hat etwas geschickt, was diese Seite nicht versteht; die Verbindung ist geschlossen. Lade die Seite auf beiden Geräten neu, damit sie dieselbe Fassung haben, und beginne neu.'
export const SPOILT: string =
  'Es kam nicht an, wie es abgeschickt wurde, und wurde nicht genommen. Schick es noch einmal.'
