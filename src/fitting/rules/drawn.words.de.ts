import type { EaseLevel } from '../../draft/ease.ts'
import { EDGES, PIECES } from '../../draft/piece.words.de.ts'
import { capital } from '../../units/capital.ts'
import type { DRAWN_WORDS as English, roundBody as round } from './drawn.words.ts'

const LEVELS: Readonly<Record<EaseLevel, string>> = {
  bust: 'um die Brust',
  waist: 'um die Taille',
  highHip: 'um die hohe Hüfte',
  hip: 'um die Hüfte',
}

export const roundBody: typeof round = (level) => LEVELS[level]

export const DRAWN_WORDS: typeof English = {
  wouldWiden: (by, level) => `Im Taillenabnäher kämen ${roundBody(level)} ${by} mm dazu.`,
  otherDart: (id, why) => `${id}: ${why} Der andere Abnäher wird versucht.`,
  inPart: (id, why) =>
    `${id}: ${why} Gezeichnet wird jetzt so viel, wie geht; der Rest wird beobachtet.`,
  notHere: (by, why) => `${by} mm lassen sich hier nicht zeichnen. ${why}`,
  turnsAlong: (by, level) =>
    `Unter der Taille schwenkt das Vorderteil mit: ${roundBody(level)} ${by} mm mehr.`,
  slants: ({ piece, edge, closes, width, across }) =>
    `${capital(EDGES[edge].der)} ${PIECES[piece].des} läuft dort schräg zum ${piece === 'front' ? 'Brustpunkt' : 'Schulterblattpunkt'}: Um die Kante ${width} mm ${closes ? 'kürzer' : 'länger'} zu machen, ist der Keil ${across} mm breit, und der Abnäher öffnet sich um so viel mehr.`,
  takenUp: (into, opens, wider, level, taken) => {
    const dart = into === 'front.bustDart' ? 'Brustabnäher' : 'Taillenabnäher'
    const below =
      wider === undefined
        ? 'lässt die Weite unter der Taille, wie sie ist'
        : `gibt ${roundBody(level)} ${wider} mm dazu`
    return taken
      ? `Der ${dart} nimmt es auf: Er öffnet sich um ${opens} mm und ${below}.`
      : `Nimmt es stattdessen der ${dart} auf, öffnet er sich um ${opens} mm und ${below}. Welcher von beiden es sein soll, wählst du.`
  },
  noSuchPart:
    'Dieses Stück hat kein solches Teil, das sich ändern ließe. Sieh dir die anderen Ursachen der Beobachtung an.',
  oneSide:
    'Das versetzt die Mittellinie, die beide Hälften teilen. Steck beide Hälften ab, oder such die Ursache an der Schulter oder an der Seitennaht dieser Hälfte.',
  noWidthAcross:
    'Der Ärmel ist angeschnitten: Eine Breite quer darüber gibt es nicht. Ändere die Mehrweite an der Brust, oder setz die Oberarmnaht höher.',
  noArmhole:
    'Der Ärmel ist angeschnitten: Ein Armloch gibt es nicht. Schwenke die Oberarmnaht, oder versetze den Achselpunkt.',
  noSuchCap: 'So hoch ist keine Armkugel dieser Breite. Ändere zuerst die Breite des Ärmels.',
  noElbowDart:
    'Der Ärmel ist ohne Abnäher am Ellbogen gezeichnet. Halte die hintere Naht ein, oder mach den Ärmel länger.',
}
