import type { OpeningKind } from '../../draft/opening.ts'
import { EDGES } from '../../draft/piece.words.de.ts'
import type * as English from './proof.words.ts'

export const QUESTIONS: typeof English.QUESTIONS = {
  gettingIn: 'Kommst du hinein?',
  head: 'Geht der Kopf hindurch?',
  armOpening: 'Geht der Arm hindurch?',
  neck: 'Halsausschnitt',
  shoulderSeams: 'Nähte über Schulter und Arm',
  sideSeams: 'Seitennähte hinten und vorn',
  frontAndBack: 'Vorderteil neben dem Rückenteil',
  darts: 'Abnäher',
  outline: 'Umriss',
}

export const SEVERITY_WORDS: typeof English.SEVERITY_WORDS = {
  stop: 'Nicht zum Zuschneiden',
  muslin: 'Nur für ein Probeteil',
  note: 'Gut zu wissen',
}

const WITH: Readonly<Record<OpeningKind, string>> = {
  sideZip: 'Mit dem Reißverschluss in der linken Seite',
  backZip: 'Mit dem Reißverschluss in der hinteren Mitte',
  buttonedFront: 'Mit der Knopfleiste vorn',
  neckSlit: 'Mit dem Halsschlitz hinten',
  keyhole: 'Mit dem Tropfenausschnitt vorn',
}

export const PROOF_WORDS: typeof English.PROOF_WORDS = {
  proof: 'Prüfung',
  count: (holding, asking, notes) =>
    asking + notes === 0
      ? `alle ${holding} stimmen`
      : [
          `${holding} ${holding === 1 ? 'stimmt' : 'stimmen'}`,
          ...(asking > 0 ? [`${asking} offen`] : []),
          ...(notes > 0 ? [`${notes} zu wissen`] : []),
        ].join(', '),
  opensNow: (sentence, opening) => `${sentence} Jetzt: ${opening}.`,
  eitherSide: (left, right) => `Links: ${left} Rechts: ${right}`,
  holds: 'Stimmt.',
  showIt: (place) => `Zeigen: ${place}`,
  severity: (severity) => `${SEVERITY_WORDS[severity]}.`,

  waistPassesWith: (opening) => `${WITH[opening]} geht die Taille über Brust und Schultern.`,
  waistPasses: 'Die Taille geht über Brust und Schultern.',
  headPassesWith: (opening) => `${WITH[opening]} geht der Kopf hindurch.`,
  neckRound: (length) => `Die Halsöffnung misst ${length} rundum.`,
  armOpeningRound: (length) => `Die Öffnung misst ${length} rundum.`,
  armholeRound: (length) => `Das Armloch misst ${length} rundum.`,
  bothAsSewn: (length) => `Beide ${length}, wie genäht.`,
  legsEqual: 'Die Schenkel sind paarweise gleich lang.',
  neckRunsOn: (over) => `Er läuft über ${EDGES[over].den} in einer Linie weiter.`,
  raisedByTape: 'Das Vorderteil ist um das angehoben, was das Maßband sagt.',
  squareOnFold: 'Am Stoffbruch rechtwinklig, und er kreuzt sich nirgends.',

  act: {
    chooseOpening: 'Öffnung wählen',
    chooseOther: 'Andere Öffnung wählen',
    lookAtDarts: 'Abnäher ansehen',
    turnNeck: 'Hals verstellen',
    turnUnderarm: 'Achselpunkt verstellen',
    turnSleeve: 'Ärmel verstellen',
    chooseSleeveEnd: 'Schlitz oder Manschette wählen',
    widenFront: 'Vorderteil breiter machen',
    turnLength: 'Länge verstellen',
  },
}
