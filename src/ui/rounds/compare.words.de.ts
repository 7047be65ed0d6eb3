import type {
  CHANGED_WORDS as EnglishChanged,
  COMPARE_WORDS as EnglishCompare,
  Counted,
  COURSE_WORDS as EnglishCourse,
  HOW_WORDS as EnglishHow,
  LAID_WORDS as EnglishLaid,
  SAID_WORDS as EnglishSaid,
} from './compare.words.ts'

export const COMPARE_WORDS: typeof EnglishCompare = {
  title: 'Vergleich',
  pair: (before, after) => `Runde ${before} mit Runde ${after}`,
  about: 'Was ein Probeteil gelehrt hat, neben dem, was das nächste daraus gemacht hat.',
  below: 'Unten',
  onTop: 'Oben',
  emptyTitle: 'Eine Runde allein liegt noch über keiner anderen.',
  empty:
    'Hat ein Probeteil zu einer Änderung geführt, liegt die nächste Runde hier über dieser: die alten Linien als Heftstich, Geändertes violett, dazu jede Zahl, die sich verschoben hat.',
  sayWhat: (round) => `Sagen, was Probeteil ${round} macht`,
  openDraft: 'Schnitt öffnen',
  openDraftOf: (round) => `Schnitt von Runde ${round} öffnen`,
  startNext: (round) => `Runde ${round} von hier beginnen`,
  putOnPaper: (round) => `Runde ${round} zu Papier bringen`,
  inView: 'Im Blick',
  parts: { pieces: 'Teile', body: 'Körper', changes: 'Neues', record: 'Protokoll' },
  round: (number) => `Runde ${number}`,
  roundStanding: (number, standing) => `Runde ${number}, ${standing}`,
  onPaper: (day) => `zu Papier gebracht am ${day}`,
  aside: 'beiseitegelegt',
  beingDrawn: 'in Arbeit',
}

export const LAID_WORDS: typeof EnglishLaid = {
  title: 'Teile übereinander',
  piece: 'Schnittteil',
  pinnedOn: 'Gesteckt',
  writtenOn: 'Beschriftet mit',
  lengths: 'Längen',
  points: 'Punkten',
  label: (piece, before, after, changed) =>
    `${piece}, Runde ${before} unter Runde ${after}: ${changed}`,
  lineOfRound: (round) => `Runde ${round}`,
  lineChanged: (round) => `geändert in Runde ${round}`,
  lineSame: 'unverändert',
  moved: (count) => `Verschobene Punkte: ${count}`,
  noneMoved: (pinned) =>
    `Gesteckt bei „${pinned}“ liegt kein Buchstabe und keine Abnäherspitze woanders.`,
  movedOf: (piece, pinned) => `${piece}, gesteckt bei „${pinned}“; die größte Verschiebung zuerst.`,
  fromFold: (length) => `${length} weg vom Stoffbruch`,
  toFold: (length) => `${length} zum Stoffbruch hin`,
  right: (length) => `${length} nach rechts`,
  left: (length) => `${length} nach links`,
  down: (length) => `${length} tiefer`,
  up: (length) => `${length} höher`,
}

export const CHANGED_WORDS: typeof EnglishChanged = {
  title: 'Was sich geändert hat',
  largestFirst: 'das Größte zuerst',
  halfPieces: 'Halbe Teile',
  allSame: 'Jede Zahl bleibt gedruckt dieselbe.',
  nothing:
    'Jede Zahl bleibt gedruckt dieselbe. Zwischen diesen beiden Runden wurde nichts geändert.',
  same: (count) => `In beiden gleich: ${count}`,
  aPiece: 'ein Schnittteil',
  noPiece: 'keines',
  partOf: (piece, part) => `${piece}, ${part}`,
}

const NUMBERS = ['keine', 'eine', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun']
const number = (count: number): string => NUMBERS[count] ?? `${count}`
const some = (count: number, how: string): string[] =>
  count === 0 ? [] : [`${number(count)} ${how}`]

/** „Drei Zahlen haben sich geändert. Von deinen Beobachtungen: eine weg, eine neu.“ */
export function SUMMARY(counted: Counted): string {
  const { numbers, picked } = counted
  const changed = [
    ...some(numbers, numbers === 1 ? 'Zahl' : 'Zahlen'),
    ...some(picked, picked === 1 ? 'Auswahl' : 'Auswahlen'),
  ].join(' und ')
  const have = numbers + picked === 1 ? 'hat' : 'haben'
  const first =
    changed === ''
      ? 'Keine Zahl hat sich geändert.'
      : `${changed.charAt(0).toUpperCase()}${changed.slice(1)} ${have} sich geändert.`
  const said = [
    ...some(counted.gone, 'weg'),
    ...some(counted.better, 'besser'),
    ...some(counted.again, 'noch da'),
    ...some(counted.worse, 'schlimmer'),
    ...some(counted.new, 'neu'),
  ]
  return said.length === 0 ? first : `${first} Von deinen Beobachtungen: ${said.join(', ')}.`
}

export const SAID_WORDS: typeof EnglishSaid = {
  title: 'Was du gesagt hast',
  nothing: 'Zu keinem der beiden Probeteile wurde bisher etwas gesagt.',
  undecided: 'offen',
  nothingToChange: 'nichts zu ändern',
  still: (name, now) => [`${name}, weiterhin `, now, '.'],
  fromTo: (name, was, now) => [`${name}, von `, was, ' auf ', now, '.'],
  read: (name, read) => [`${name}, `, read, '.'],
  unread: (name) => [`${name}.`],
}
export const HOW_WORDS: typeof EnglishHow = {
  gone: 'weg',
  better: 'besser',
  same: 'gleich',
  worse: 'schlimmer',
  again: 'wieder',
  new: 'neu',
  unseen: 'noch nicht angesehen',
}

export const COURSE_WORDS: typeof EnglishCourse = {
  title: 'Kommt es zur Ruhe?',
  fact: 'nach Körperstelle, Runde um Runde',
  nothing:
    'Noch wurde nichts geändert. Ab der zweiten Runde wird hier gezeichnet, was jedes Probeteil verlangt hat, damit du siehst, wie es weniger wird.',
  nought: 'nichts',
  round: (round) => `Runde ${round}`,
  open: (count) => `${count} offen`,
  line: (zone, amounts) =>
    `${zone}: ${amounts.map(({ round, amount }) => `Runde ${round} ${amount}`).join(', ')}`,
  about:
    'Über der Linie wurde zugegeben, darunter weggenommen. „Offen“ sind Beobachtungen an diesem Probeteil, die etwas verlangen.',
  swings: (zone) => `${zone}: Es geht auf und ab.`,
  turned: (rounds, untried) =>
    `In den Runden ${rounds.slice(0, -1).join(', ')} und ${rounds.at(-1)} ging es hin, her und wieder hin. Bevor du noch einmal drehst, sieh nach, was noch nicht versucht wurde: ${untried ? '' : 'Jede Ursache, die wir kennen, war schon dran.'}`,
}
