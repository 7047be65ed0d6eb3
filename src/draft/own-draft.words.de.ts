import type { OWN_DRAFT_WORDS as English } from './own-draft.words.ts'

const WIDTH =
  'Prüf das Viertel des Umfangs und seine Mehrweite und ob die Linie im rechten Winkel zur Mitte steht.'
const SLEEVE_SEAM = 'Prüf die Ärmellänge und was am Saum weggenommen ist.'
const WAIST_DART = 'Prüf den Abnäherinhalt in der Taille und ob auf jeder Seite die Hälfte liegt.'

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
    neck: 'Prüf Breite und Tiefe des Ausschnitts, dann, ob die Rundung im rechten Winkel von der Mitte abgeht.',
    overarm: 'Miss vom Halspunkt aus; prüf die Höhe, auf der die Oberarmnaht endet.',
    shoulder: 'Miss vom Halspunkt aus; prüf die Höhe des Schulterpunkts.',
    sleeveEdge:
      'Prüf den Zirkel: wo er einsticht, wie weit er offen ist und ob der Bogen bei U endet.',
    armhole: 'Prüf den Punkt Z der Breite und die Achsellinie; eine flachere Rundung ist kürzer.',
    side: 'Prüf U, W und X, dann die Tiefe des Achselpunkts; die Rundung kommt zuletzt.',
    hem: 'Prüf die Breite auf der Hüftlinie und ob der Saum im rechten Winkel zur Mitte steht.',
    waist: 'Prüf den Inhalt der Abnäher, dann die Breite auf der Taillenlinie.',
    cap: 'Prüf Höhe und Weite der Armkugel; eine rundere Linie ist länger.',
    frontSeam: SLEEVE_SEAM,
    backSeam: SLEEVE_SEAM,
    waistDart: WAIST_DART,
    waistDart2: WAIST_DART,
    bustDart:
      'Prüf den Unterschied: Vorderlänge über die Brust minus Rückenlänge über das Schulterblatt.',
    bustDart2: 'Prüf, wie viel vom Brustabnäher an seine zweite Stelle gegangen ist.',
    shoulderDart: 'Prüf den Inhalt des Schulterabnähers; um ihn ist die Schulter länger.',
    bustLine: WIDTH,
    waistLine: WIDTH,
    hipLine: WIDTH,
    bustTip: 'Prüf den Brustpunktabstand; die Hälfte davon wird von der Mitte aus angelegt.',
  },
}
