import type { HowRead } from '../../fitting/pinned.ts'
import type { Said } from '../fitting/change-said.ts'
import type {
  DRIFT_WORDS as EnglishDrift,
  FACTS_WORDS as EnglishFacts,
  FIT_SHEET_WORDS as EnglishFitSheet,
  PAPER_SAID as EnglishPaperSaid,
  PAPER_WORDS as EnglishPaper,
  Read,
  RECORD_WORDS as EnglishRecord,
  SHEET_WORDS as EnglishSheet,
} from './record.words.ts'

export const RECORD_WORDS: typeof EnglishRecord = {
  title: 'Das Protokoll',
  fact: 'eine Runde auf Papier bleibt, wie sie ist',
  round: 'Runde',
  option: (number, standing) => `${number}, ${standing}`,
  keptVerdict: (verdict) => `Festgehalten: ${verdict}.`,
  keptCloth: 'Festgehalten: der Stoff.',
  goesOn: (round, from) => `Runde ${round ?? ''} geht von Runde ${from} aus weiter.`,
  muslinIs: (round) => `Probeteil ${round}:`,
  sewnOf: 'Genäht aus',
  clothSuch: 'gebleichter Nessel, gewaschen',
  movements: 'Bewegungen',
  noMovements: 'In diesem Probeteil wurde noch keine versucht; die Anprobe fragt danach.',
  putOnPaper: 'Zu Papier gebracht',
  on: (day) => `Am ${day}.`,
  notYet: 'Noch nicht.',
  setAside: (round) =>
    `Runde ${round} ist noch nicht auf Papier. Sie wird beiseitegelegt, wie sie ist, mit allem, was darin entschieden wurde; später kann eine Runde von ihr ausgehen.`,
  branch: (round) => `Eine Runde von Runde ${round} aus beginnen`,
  notesTo: (round) => `Notizen zu Runde ${round}`,
  notesSuch: 'Stoff, Nadel, worauf beim nächsten Mal zu achten ist',
  kept: 'Gesichert.',
  notesByZone: 'Notizen nach Körperstelle',
  noneYet: 'noch keine',
  keptZone: (zone) => `Gesichert: ${zone}.`,
}

export const PAPER_WORDS: typeof EnglishPaper = {
  sheets: 'Blätter zum Kleben',
  roll: 'ein großer Bogen',
  byHand: 'von Hand gezeichnet',
  projector: 'mit dem Beamer projiziert',
  drawing: 'eine Zeichnung für eine Schneidemaschine',
  cuttingPlan: 'der Auflageplan',
  sewingPlan: 'der Nähplan',
}
export const PAPER_SAID: typeof EnglishPaperSaid = (day, how, about) =>
  `${day}: ${PAPER_WORDS[how]}${about ? `, ${about}` : ''}`

const standing = (onPaper: string | undefined, aside: boolean): string =>
  onPaper !== undefined
    ? `auf Papier seit ${onPaper}`
    : aside
      ? 'beiseitegelegt, nie auf Papier'
      : 'noch nicht auf Papier'

export const FACTS_WORDS: typeof EnglishFacts = {
  round: (number) => `Runde ${number}`,
  days: (begun, onPaper, aside) => `begonnen am ${begun}, ${standing(onPaper, aside)}`,
  changes: 'Änderungen',
  noChanges: 'Keine: Das ist der Schnitt, wie ihn Maße und Wahl ergeben.',
  broughtAlong: 'Von einem früheren Stück mitgebracht: Es kommt vom Körper.',
  takenBack: 'Zurückgenommen.',
  choices: 'Geänderte Wahl',
  noChoices: 'Nichts; alles steht wie üblich.',
  numbers: 'Maße',
}

const HOW_READ_WORDS: Readonly<Record<HowRead, string>> = {
  wholeFold: 'ganze Falte',
  foldToPin: 'Bruch bis Nadel',
  seamToPin: 'Naht bis Nadeln',
  levelError: 'Linie zu Linie',
  slitOpen: 'Einschnitt',
}
export const BECAUSE = ({ round, complaint, cause, read, how, share, watch }: Read): Said => [
  `Wegen Probeteil ${round}: ${complaint}, ${cause}. Abgelesen `,
  read,
  ` (${HOW_READ_WORDS[how]}), ${share} geändert.`,
  ...(watch === 0 ? [] : [' Beim nächsten Mal auf ', watch, ' achten.']),
]

export const DRIFT_WORDS: typeof EnglishDrift = {
  numbers: (lengths, more, round) => {
    const rest = more > 0 ? [lengths.length > 0 ? `${more} weitere` : `${more} Punkte`] : []
    return `Das Programm hat sich seither geändert: Es würde jetzt andere Zahlen drucken: ${[...lengths, ...rest].join('; ')}. Dein Papier von Runde ${round} bleibt, wie es ist; hier gezeichnet ist die neue Rechnung.`
  },
  words: (count) =>
    `Das Programm sagt ${count} ${count === 1 ? 'Schritt' : 'Schritte'} jetzt mit anderen Worten; die Zahlen sind dieselben.`,
  which: (count) => `Welche es sind: ${count}`,
  point: (name) => name.replace('.', ', Punkt '),
  notThen: 'damals nicht gedruckt',
  notNow: 'nicht mehr gezeichnet',
  lies: ['liegt', 'woanders'],
  steps: 'Schritte, wie sie gedruckt wurden, heute anders gesagt:',
}

export const SHEET_WORDS: typeof EnglishSheet = {
  title: 'Auf Papier, zum Aufheben',
  garment: 'Stück',
  drawing: 'Die Bogen werden gezeichnet.',
  notLoaded:
    'Die Datei konnte nicht erstellt werden: Ein Teil dieses Programms wurde nicht geladen. Lade die Seite neu und versuch es noch einmal.',
  saveRound: (round) => `Anprobebogen von Runde ${round} speichern (PDF)`,
  saveHistory: (rounds) =>
    `Verlauf speichern, ${rounds} ${rounds === 1 ? 'Runde' : 'Runden'} (PDF)`,
  withPhotos:
    'Meine Fotos in die Datei aufnehmen, Gesichter unter Papier. Ohne dieses Häkchen verlässt kein Foto diesen Browser.',
  locked: 'Deine Fotos sind verschlossen: Bis du sie öffnest, entsteht die Datei ohne sie.',
  saved: (file, photos) =>
    `Gespeichert als ${file}, ${photos === 0 ? 'ohne Fotos' : `mit ${photos} ${photos === 1 ? 'Foto' : 'Fotos'}, Gesichter unter Papier`}.`,
  roundFile: 'anprobebogen.pdf',
  historyFile: 'verlauf.pdf',
  photoOf: (round, view) => `Runde ${round}, ${view}`,
  titleAll: (garment) => `${garment}, alle Runden`,
  titleOne: (garment, round) => `${garment}, Runde ${round ?? ''}`,
  foot: (garment, round) => `${garment} · Runde ${round}`,
}

export const FIT_SHEET_WORDS: typeof EnglishFitSheet = {
  round: (number) => `Runde ${number}`,
  days: (begun, onPaper, aside, fromEarlier) =>
    `Begonnen am ${begun}, ${standing(onPaper, aside)}${fromEarlier ? '; sie geht von einer früheren Runde aus' : ''}.`,
  sewnOf: (cloth) => `Genäht aus: ${cloth}.`,
  verdict: (verdict) => `Urteil: ${verdict}.`,
  changes: 'Änderungen bis zu dieser Runde',
  takenBack: 'Zurückgenommen.',
  seen: 'Was am Probeteil zu sehen war',
  seenLine: (day, complaint, read, answer) =>
    `${day}: ${complaint}${read === undefined ? '' : `, ${read}`}; ${answer}.`,
  movements: 'Bewegungen',
  notes: 'Notizen',
  putOnPaper: 'Zu Papier gebracht',
  numbers: 'Maße',
  choices: 'Wahl, die vom Üblichen abweicht',
  upTo: (rounds, last) => `${rounds} ${rounds === 1 ? 'Runde' : 'Runden'}, bis zu Runde ${last}.`,
  course: 'Der Verlauf',
  courseLine: (round, zones, open) =>
    `Runde ${round}: ${zones.join(', ') || 'nichts geändert'}; ${open.length === 0 ? 'nichts' : open.join(', ')} offen.`,
}
