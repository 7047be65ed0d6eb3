import { capital } from '../units/capital.ts'
import type { AnyDart, EdgeName, PieceId } from '../draft/piece.ts'
import { DARTS, EDGES, PIECES } from '../draft/piece.words.de.ts'
import { mm, type Mm } from '../units/length.ts'
import { says } from './pass.ts'
import type {
  FLAT_WORDS as Flat,
  LAST_WORDS as Last,
  OPENING_WORDS as Opening,
  PLAN_WORDS as Plan,
  SEAM_WORDS as Seam,
  SHAPED_WORDS as Shaped,
} from './sewing-plan.words.ts'

export const PLAN_WORDS: typeof Plan = {
  title: 'Nähplan',
  lengths:
    'Die Längen gelten für die Nahtlinie einer Seite. Jede Naht wird gebügelt, bevor eine andere sie kreuzt.',
  allowance: (by) => `Nahtzugabe ${by}`,
  sides: (left, right) => `links ${left}, rechts ${right}`,
  long: (long, times) =>
    times === undefined ? long : `${long}, ${TIMES[times] ?? `${times}-mal`}`,
  press: (how) => `Bügeln: ${how}`,
}
const TIMES: Readonly<Record<number, string>> = { 1: 'einmal', 2: 'zweimal', 4: 'viermal' }

export const FLAT_WORDS: typeof Flat = {
  ready: (cloth) => `${capital(cloth)} vorbereiten`,
  straighten: says`Schneide beide Enden fadengerade, zieh den Stoff rechtwinklig, dämpfe ihn und lass ihn flach trocknen.`,
  cut: 'Zuschneiden und markieren',
  lay: says`Leg die Teile nach dem Auflageplan auf, schneide zu, knips die Passzeichen ein.`,
  mark: says`Markiere Abnäher, Öffnungen und Mittellinien auf der linken Seite, bevor du das Papier abnimmst.`,
  blades:
    'Scheren, Klingen und Stecknadeln: Schneide von der Hand weg und zähle am Ende die Nadeln nach.',
  stay: 'Kanten sichern, die sich dehnen',
  stayRow: (outside, neck, armholes) => [
    ...says`Stütznaht durch eine Lage, normaler Stich, ${outside} außerhalb der Nahtlinie: `,
    `am Halsausschnitt ${neck === 'vee' ? 'von der Spitze des V nach oben' : 'von der Schulter zur Mitte'}${armholes ? ', am Armloch von der Schulter nach unten' : ''}.`,
  ],
  machine:
    'An der Maschine: Finger neben dem Füßchen, Haare und lose Ärmel zurückgebunden, zum Einfädeln ausgeschaltet.',
  staySoon: 'Sobald das Papier ab ist, bevor das Teil hängt oder viel bewegt wird.',
  interface: 'Einlage auf die Belege',
  fuse: says`Leg die Einlage ohne Nahtzugaben auf die linke Seite jedes Belegs und bügle sie auf.`,
  joinFacings: says`Näh die Belege zusammen, wo sie sich treffen, bügle die Nähte auseinander und versäubere die freie Kante.`,
  tryHeat: 'Probier Hitze und Dauer erst an einem Rest von beidem.',
  dart: (dart: AnyDart, piece: PieceId) => `${capital(DARTS[dart].bare)} ${PIECES[piece].des}`,
  fromTheWaist: says`Falte ihn an seiner Mittellinie, näh von der Taille zu jeder Spitze, die letzten drei Stiche am Bruch entlang.`,
  fromTheEdge: (edge: EdgeName) => [
    `Falte ihn an seiner Mittellinie, näh ${EDGES[edge].vom} zur Spitze, die letzten drei Stiche am Bruch entlang.`,
  ],
  knot: says`Verknote die Fadenenden, näh an der Spitze nicht zurück.`,
  pressTowardsCentreRound: says`zur Mitte hin, über einem runden Bügelkissen, nur bis zur Spitze.`,
  pressTowardsCentre: says`zur Mitte hin, nur bis zur Spitze.`,
  pressDown: says`nach unten, über einem runden Bügelkissen, nur bis zur Spitze.`,
}

export const SHAPED_WORDS: typeof Shaped = {
  gathers: (piece, edge) => `Eingereihte Weite ${PIECES[piece].des}, ${EDGES[edge].bare}`,
  gatherRows: (beside: Mm) =>
    says`Näh zwischen den Marken zwei Reihen mit dem längsten Stich, je ${beside} zu beiden Seiten der Nahtlinie.`,
  drawUp: (to: Mm) =>
    says`Zieh beide auf ${to} zusammen, wickle die Fäden um eine Stecknadel, verteile die Fältchen gleichmäßig.`,
  gathersOnTop: says`Beim Nähen liegt die eingereihte Seite oben; zieh danach die Reihe heraus, die man sieht.`,
  pressGathers: says`von der Zugabe in die Fältchen hinein mit der Spitze des Bügeleisens, nie quer darüber.`,
  style: (finish) => `Teilungsnähte über der Brust: ${finish}`,
  stayStyle: (outside: Mm) =>
    says`Sichere die Rundung des mittleren Teils mit einer Stütznaht ${outside} außerhalb der Nahtlinie und schneide bis zu ihr ein.`,
  matchStyle: says`Leg erst die Passzeichen am Brustpunkt aufeinander, dann beide Enden; näh mit dem eingeschnittenen Teil oben.`,
  pressStyle: says`über einem runden Bügelkissen, erst die Rundung, dann den Rest flach.`,
  styleEqual:
    'Beide Linien sind gleich lang: Was nicht aufeinanderpasst, ist verschnitten oder gedehnt, nicht so gezeichnet.',
  vents: 'Schlitze an den Seiten',
  ventPress: says`Bügle die Zugaben der Seite am Schlitz entlang weiter nach unten um, auf der Nahtlinie.`,
  ventSew: says`Schlag ihre Schnittkanten ein und näh sie fest: vom Saum nach oben, über dem Schlitz quer, wieder nach unten.`,
  ventBar: says`Verriegle das Ende von Hand oder mit einem kurzen, dichten Stich quer darüber.`,
  pressVent: says`beide Kanten aneinander, nicht übereinander.`,
  ventClip:
    'Ist die Naht eine französische, schneide ihre Zugabe knapp über dem Schlitz bis zur Naht ein.',
}

export const OPENING_WORDS: typeof Opening = {
  slit: 'Schlitz am hinteren Hals',
  slitLay: says`Leg den Beleg auf die rechte Seite, seine Mitte auf die Schlitzlinie.`,
  slitSew: (beside: Mm) =>
    says`Näh um die Linie herum, am Hals ${beside} von ihr entfernt, unten spitz zulaufend, dort einen Stich quer.`,
  slitCut: says`Schneide auf der Linie bis zum letzten Faden vor den Stichen ein, wende und bügle.`,
  slitMind:
    'Erst nähen, dann schneiden: Ein zu früh geschnittener Schlitz lässt sich nicht belegen.',
  keyhole: 'Tropfenausschnitt am vorderen Hals',
  keyholeLay: says`Leg den Beleg auf die rechte Seite, seine Mitte auf die vordere Mitte, und steck am Hals die Schlinge dazwischen.`,
  keyholeSew: says`Näh den Tropfen auf seiner Linie mit kurzem Stich, vom Hals hinunter, unten herum und wieder hinauf.`,
  keyholeCut: (inside: Mm) =>
    says`Schneide den Tropfen ${inside} innerhalb der Stiche aus, schneide die Rundung fast bis zu ihnen ein, wende und bügle.`,
  keyholeMind: 'Erst nähen, dann schneiden: mit der Spitze einer kleinen Schere, von der Hand weg.',
  front: 'Vordere Belege',
  pressFront: says`die Naht erst, wie sie liegt, dann gewendet, das Vorderteil ein Haar über den Beleg gerollt.`,
  backZip: 'Hintere Mittelnaht mit Reißverschluss',
  centre: (piece) => `Mittelnaht ${PIECES[piece].des}`,
  zipLong: (long: Mm) => says`Die Öffnung ist ${long} lang.`,
  zipTry: 'Probier den Reißverschluss einmal, bevor die Enden verdeckt sind.',
  sideZip: 'Reißverschluss in der linken Seite',
  sideOpen: (long: Mm) => says`Die linke Seite ist auf ${long} Länge offen geblieben.`,
  sideSet: says`Bügle ihre Zugaben auf der Nahtlinie um und setz den Reißverschluss ein.`,
  leftOnly: 'Nur die linke Seite.',
  buttons: 'Knopflöcher und Knöpfe',
  tryButtonhole: says`Probier ein Knopfloch an einem Rest aus denselben Lagen.`,
  placeButtons: says`Die Knopflöcher kommen auf das rechte Vorderteil, auf die Mittellinie; die Knöpfe auf das linke.`,
  pinAcross: 'Eine Stecknadel quer am Ende jedes Knopflochs hält die Klinge auf.',
  keyholeButton: 'Knopf am Tropfenausschnitt',
  sewKeyholeButton: says`Näh den Knopf gegenüber der Schlinge an den Halsausschnitt.`,
  loop: 'Schlinge und Knopf am hinteren Hals',
  sewLoop: says`Näh oben die Schlinge an die eine Kante und den Knopf an die andere.`,
}

export const SEAM_WORDS: typeof Seam = {
  seams: (edge, finish) => `${capital(EDGES[edge].many)}: ${finish}`,
  ofPiece: (edge, piece) => `${capital(EDGES[edge].bare)} ${PIECES[piece].des}`,
  pressOver: says`zum Rücken hin, bevor etwas sie kreuzt.`,
  overarmTape: 'Sie läuft schräg zum Fadenlauf: Näh nahe am Hals ein schmales Band mit ein.',
  neck: (finish) => `Hals: ${finish}`,
  neckFacing: 'Hals: geformter Beleg',
  pressNeck: says`über einem runden Bügelkissen, die Kante ein Haar nach innen gerollt.`,
  hangSleeves: 'Ärmelkanten aushängen lassen',
  hangADay: says`Häng es einen Tag und eine Nacht auf eine Büste oder einen Bügel.`,
  measureSleeveEdge: says`Miss die Ärmelkante noch einmal vom Halspunkt aus, markiere sie auf der Länge des Schnitts und schneide ab, was sich ausgehängt hat.`,
  radius: (piece, from, radius) => [
    `${capital(PIECES[piece].bare)}: `,
    ...(from < 0
      ? says`Von einem Punkt in der Linie der Oberarmnaht, ${mm(-from)} vor dem Halspunkt, `
      : from === 0
        ? says`Vom Halspunkt aus `
        : says`Von einem Punkt auf der Oberarmnaht, ${from} vom Halspunkt, `),
    ...says`liegt die Kante laut Schnitt überall ${radius} entfernt, bis zur Ecke unter dem Arm.`,
  ],
  cutDropped: says`Miss diesen Radius an jeder Handbreit nach, markiere ihn und schneide ab, was sich ausgehängt hat.`,
  drafted: (long: Mm, edge: EdgeName) => [
    ...says`Laut Schnitt: ${long} entlang `,
    `${EDGES[edge].dem}.`,
  ],
  biasDrops: 'Im schrägen Fadenlauf hängt es ungleich aus: Miss beide Ärmel alle Handbreit nach.',
  hangSkirt: 'Rock aushängen lassen',
  hangByTheWaist: says`Häng ihn an der Taille einen Tag und eine Nacht auf, an einer Büste oder an einen Bügel geklammert.`,
  measureHem: says`Miss den Radius des Saums noch einmal von der Taillennaht aus, markiere ihn und schneide ab, was sich ausgehängt hat.`,
  draftedRound: (long: Mm) => says`Laut Schnitt: rundum ${long} von der Taillennaht aus.`,
  skirtDrops:
    'Am meisten hängt er auf halbem Weg zwischen Mitte und Seite aus: Miss alle Handbreit nach.',
  sleeveCatches:
    'Ein weiter Ärmel bleibt hängen: Halte ihn fern von Flamme, Herd, laufender Maschine und Bohrer.',
  leaveOpen: (long: Mm) => says`Lass die linke Seite auf ${long} Länge offen, wie markiert.`,
  pressSide: says`erst an der Naht entlang, dann zum Rücken hin oder auseinander.`,
  sideAndUnderarm: 'Seite und Achsel in einem',
  underarmTight:
    'Wo es unter dem Arm eng herumgeht: dicht daneben eine zweite Naht, auf beiden Seiten fingerlang, dann bis zu ihr einschneiden.',
  aboveVent: (open: Mm) =>
    says`Näh bis zur Marke des Schlitzes hinunter und vernähe; die letzten ${open} bleiben offen.`,
  skirtSides: 'Seitennähte des Rocks',
  waist: (finish) => `Taillennaht: ${finish}`,
  pressWaist: says`zum Oberteil hin.`,
  waistTape:
    'Leg erst Mitten, Seiten und Abnäher aufeinander. Näh ein Band mit ein, damit sie ihre Länge behält.',
  sleeveSeams: 'Ärmelnähte',
  setSleeves: 'Ärmel einsetzen',
  easeRows: (inner: Mm, outer: Mm) =>
    says`Näh über die Armkugel zwischen den Passzeichen zwei Reihen zum Einhalten, ${inner} und ${outer} außerhalb der Nahtlinie, längster Stich.`,
  matchCap: says`Leg Achsel, Passzeichen und Schulter aufeinander, zieh die Fäden an, bis die Armkugel ins Armloch passt, ohne Fältchen auf der Nahtlinie.`,
  tackSleeves:
    'Hefte und probier an, bevor du mit der Maschine nähst: beide Ärmel an denselben Passzeichen.',
  hem: (finish) => `Saum: ${finish}`,
  hemAtVents:
    'Er endet an den Schlitzen: Schlag seine Enden bündig mit ihren Kanten ein und näh sie zu.',
  sleeveHems: (finish) => `Ärmelsäume: ${finish}`,
}

export const LAST_WORDS: typeof Last = {
  tacked: 'Schultern und Seiten heften, anprobieren',
  tackedHow: [
    says`Näh mit dem längsten Stich auf den Nahtlinien. Sieh es von allen Seiten an, heb die Arme, setz dich.`,
    says`Was du hier änderst, ändere auch am Schnitt, bevor etwas endgültig genäht wird.`,
  ],
  hem: 'Anprobieren und Saum markieren',
  hemHow: [
    says`Zieh an, was du dazu tragen wirst, steh gerade und lass den Saum vom Boden aus markieren, oder zeichne ihn auf einem Tisch waagerecht an.`,
  ],
  pins: 'Stecknadeln zeigen von dir weg, keine am Hals oder unter dem Arm. Zähle sie, wenn du es ausgezogen hast.',
  pinShut: 'Steck die Öffnung auf ihrer Linie zu.',
  press: 'Letztes Bügeln',
  pressHow: [
    says`Zieh jeden Heftfaden heraus und zähle die Stecknadeln.`,
    says`Bügle noch einmal, zuerst von links.`,
  ],
  iron: 'Das Bügeleisen verbrennt Stoff und Haut. Probier seine Hitze an einem Rest.',
}
