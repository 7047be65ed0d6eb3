import { DARTS, EDGES, PIECES } from '../../draft/piece.words.de.ts'
import type { Operation } from './operation.ts'
import type { Down, Out, PAPER_WORDS as English } from './paper.words.ts'

type Turn = Extract<Operation, { op: 'ROT' }>
const toPivot = ({ piece }: Turn): string =>
  piece === 'front' ? 'bis zum Brustpunkt' : 'bis zum Schulterblattpunkt'
const atPivot = ({ piece }: Turn): string =>
  piece === 'front' ? 'am Brustpunkt' : 'am Schulterblattpunkt'
const upDown = ({ by, down }: Down): string => `${by} nach ${down ? 'unten' : 'oben'}`
const inOut = ({ by, out }: Out): string => `${by} nach ${out ? 'außen' : 'innen'}`

export const PAPER_WORDS: typeof English = {
  rule: (op, along) =>
    `Zeichne P ${EDGES[op.edge].am} an, ${along} ${op.edge === 'neck' ? 'vom Stoffbruch' : 'vom Achselpunkt'}. Zieh eine Linie von P ${toPivot(op)}. Schneide ${DARTS[op.into].den} ${toPivot(op)} auf, aber nicht durch ihn hindurch.`,
  turn: (op, across, loses) => {
    const act = op.width > 0 ? `Falte dort ${across} weg` : `Öffne es um ${across}`
    const slant =
      loses === undefined
        ? ''
        : ` Die Kante läuft dort schräg und ${op.width > 0 ? 'verliert' : 'gewinnt'} ${loses} ihrer Länge.`
    return `${act}, auf null ${atPivot(op)}; ${DARTS[op.into].der} nimmt es auf. Kleb fest und zieh die Kante glatt aus.${slant}`
  },
  cutToHinge: (below, far) =>
    `Schneide ${below} unter dem Halsausschnitt rechtwinklig von der Mitte ein, ${far} bis zur Kante gegenüber, aber nicht durch sie hindurch.`,
  wedge: (longer, by) =>
    `Schieb die Schnittkanten an der Mitte um ${by} ${longer ? 'auseinander' : 'übereinander'}, auf null an der Kante gegenüber. Kleb fest. Zieh die Mitte wieder gerade und schieb jede Waagerechte an sie zurück, damit die Breiten bleiben.`,
  cutAlongDart: (apex, along) =>
    `Schneide von der vorderen Mitte rechtwinklig bis zum Brustpunkt, ${apex}, und weiter auf der Mittellinie des seitlichen Abnähers${along === undefined ? '' : `, ${along}`}, bis zur Seite.`,
  drop: (longer, by) =>
    `Schieb den unteren Teil um ${by} nach ${longer ? 'unten' : 'oben'}, die Mitte in einer Linie. Kleb Papier dahinter; der seitliche Abnäher wird um so viel ${longer ? 'breiter' : 'schmaler'}.`,
  cutForBust: (arm) =>
    `Schneide den Taillenabnäher hinauf bis zum Brustpunkt und weiter ${EDGES[arm].zum}, dorthin, wo ein Drittel dieser Kante über dem Achselpunkt liegt, aber nicht durch die Kante hindurch. Schneide auf der Mittellinie des seitlichen Abnähers bis zum Brustpunkt.`,
  bust: (fuller, by, arm) =>
    `Schieb die Teile am Brustpunkt um ${by} ${fuller ? 'auseinander' : 'übereinander'}; die beiden Kanten des senkrechten Schnitts laufen dabei gleich. Schneide von der vorderen Mitte quer bis zum Brustpunkt und schieb die untere Mitte, bis sie auf gleicher Höhe endet. Kleb fest und zieh ${EDGES[arm].den} glatt aus.`,
  onPiece: (piece, work) => `${PIECES[piece].bare}: ${work}`,
  swap: (seam, less, by) =>
    `Zeichne ${PIECES[less].am} ${by} unter dem äußeren Ende ${EDGES[seam].des} an, und ebenso viel darüber ${PIECES[less === 'front' ? 'back' : 'front'].am}. Verbinde beide Marken mit dem Halspunkt.`,
  strip: (wider, level, across, by) =>
    `${wider ? 'Kleb Papier hinter das Armloch. ' : ''}Zieh eine Waagerechte ${level} unter dem Schulterpunkt; das Armloch trifft sie ${across} von der Mitte. Zeichne dort ${by} weiter ${wider ? 'außen' : 'innen'} an.`,
  stripLine: 'Zeichne das Armloch durch die Marke, am Schulterpunkt und am Achselpunkt auf null.',
  slide: (dart, down, out) =>
    `Schneide ein Rechteck um ${DARTS[dart].den} aus und schieb es ${[...(down ? [upDown(down)] : []), ...(out ? [inOut(out)] : [])].join(' und ')}; füll die Lücke. Zeichne die Naht bei gefaltetem Abnäher.`,
  dartTip: (dart, by, back) =>
    `Zeichne die neue Spitze ${DARTS[dart].des} auf seiner Mittellinie an, ${by} ${back ? 'von der alten zurück' : 'über die alte hinaus'}. Zieh beide Schenkel dorthin.`,
  dartLegs: (dart, by, outside) =>
    `Zeichne in der Taille ${by} ${outside ? 'außerhalb' : 'innerhalb'} beider Schenkel ${DARTS[dart].des} an. Zieh die Schenkel durch die Marken zu beiden Spitzen.`,
  split: (width) =>
    `Schneide den seitlichen Abnäher und den Taillenabnäher bis zum Brustpunkt auf, aber nicht durch ihn hindurch. Schließ den Taillenabnäher in der Taille um ${width}; der seitliche Abnäher öffnet sich. Kleb fest.`,
  alongAndSquare: (seam, out, down) =>
    [
      ...(out
        ? [`${out.by} weiter ${out.out ? 'außen' : 'innen'} entlang ${EDGES[seam].des}`]
        : []),
      ...(down
        ? [`${down.by} ${down.down ? 'darunter' : 'darüber'}, rechtwinklig ${EDGES[seam].zum}`]
        : []),
    ].join(' und '),
  shoulderTip: (seamLong, places, underarm, level) =>
    `vom Schulterpunkt aus, ${seamLong} vom Halspunkt, zeichne ${places} an. Zieh die Naht zur Marke.${
      underarm
        ? ` Zeichne auch den Achselpunkt an der Seite ${underarm.by} ${underarm.down ? 'tiefer' : 'höher'} an.`
        : ''
    } Zeichne das Armloch von der Marke glatt bis zur Waagerechten, ${level} unter dem alten Schulterpunkt.`,
  sideNeck: (places, seamLong) =>
    `vom Halspunkt aus zeichne ${places} an. Zieh die Naht von dort zu ihrem anderen Ende, ${seamLong} vom alten Halspunkt. Zeichne den Halsausschnitt zur Mitte, rechtwinklig am Stoffbruch.`,
  neckAtCentre: ({ by, down }, neckOut) =>
    `zeichne auf der Mitte ${by} ${down ? 'unter' : 'über'} dem Halsausschnitt eine Marke an. Zeichne den Halsausschnitt von der Marke, rechtwinklig an der Mitte, zum Halspunkt, der ${neckOut} weiter außen liegt.`,
  underarm: (down, out, fromCentre, arm, level) => {
    const at = [
      ...(down ? [`${down.by} ${down.down ? 'tiefer' : 'höher'}`] : []),
      ...(out ? [`${out.by} weiter ${out.out ? 'außen' : 'innen'}`] : []),
    ].join(' und ')
    return `zeichne den Achselpunkt ${at} an; jetzt liegt er ${fromCentre} von der Mitte. Zeichne ${EDGES[arm].den} von der Marke, rechtwinklig zur Seite, bis zur Waagerechten, ${level} über dem alten Achselpunkt, und die Seite zur Marke.`
  },
}
