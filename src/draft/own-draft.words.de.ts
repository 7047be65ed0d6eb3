import type { OWN_DRAFT_WORDS as English } from './own-draft.words.ts'

const WIDTH =
  'Sieh nach dem Viertel des Umfangs und seiner Mehrweite und ob die Linie im rechten Winkel zur Mitte steht.'
const SLEEVE_SEAM = 'Sieh nach der Ärmellänge und danach, was am Saum weggenommen ist.'
const WAIST_DART =
  'Sieh nach dem Abnäherinhalt an der Taille und ob auf jeder Seite die Hälfte liegt.'

export const OWN_DRAFT_WORDS: typeof English = {
  checks: {
    bustLine: 'Achsellinie, Mitte bis Seite',
    waistLine: 'Taillenlinie, Mitte bis Seite',
    hipLine: 'Hüftlinie, Mitte bis Seite',
    bustTip: 'Brustpunkt, von der Mitte aus',
  },
  look: {
    centre:
      'Leg das Lineal noch einmal an die Mitte: erst Nackenpunkt bis Taille, dann Taille bis Saum.',
    neck: 'Sieh nach Breite und Tiefe des Ausschnitts, dann ob die Rundung im rechten Winkel von der Mitte abgeht.',
    overarm: 'Miss vom Halspunkt aus; sieh nach der Höhe, auf der die Oberarmnaht endet.',
    shoulder: 'Miss vom Halspunkt aus; sieh nach der Höhe des Schulterpunkts.',
    sleeveEdge:
      'Sieh nach dem Zirkel: wo er einsticht, wie weit er offen ist und ob der Bogen bei U endet.',
    armhole:
      'Sieh nach dem Punkt Z der Breite und der Achsellinie; eine flachere Rundung ist kürzer.',
    side: 'Sieh nach U, W und X, dann nach der Tiefe der Achsel; die Rundung kommt zuletzt.',
    hem: 'Sieh nach der Breite auf der Hüftlinie und ob der Saum im rechten Winkel zur Mitte steht.',
    waist: 'Sieh nach dem Inhalt der Abnäher, dann nach der Breite auf der Taillenlinie.',
    cap: 'Sieh nach Höhe und Weite der Armkugel; eine rundere Linie ist länger.',
    frontSeam: SLEEVE_SEAM,
    backSeam: SLEEVE_SEAM,
    waistDart: WAIST_DART,
    waistDart2: WAIST_DART,
    bustDart:
      'Sieh nach der Vorderlänge über die Brust minus der Rückenlänge über das Schulterblatt.',
    bustDart2: 'Sieh nach, wie viel vom Brustabnäher an seine zweite Stelle gegangen ist.',
    shoulderDart: 'Sieh nach dem Inhalt des Schulterabnähers; um ihn ist die Schulter länger.',
    bustLine: WIDTH,
    waistLine: WIDTH,
    hipLine: WIDTH,
    bustTip: 'Sieh nach dem Brustpunktabstand; die Hälfte davon wird von der Mitte aus angelegt.',
  },
}
