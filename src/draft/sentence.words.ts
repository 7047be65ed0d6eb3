/**
 * The sentence a dressmaker reads for each step. Ruler, square and compass are all she needs; what
 * a step is for stands with its construction.
 */
import { inFull, inWords, type Amount } from '../units/amount.ts'
import { formatLength, formatStep, type UnitChoice } from '../units/format.ts'
import { DART_WORDS, EDGE_WORDS, LEVEL_WORDS, PIECE_WORDS } from './piece.words.ts'
import { toDegrees } from '../units/angle.ts'
import type { Act, Direction, Guide } from './step.ts'

export function sentence(step: Act, units: UnitChoice): string {
  const say = (a: Amount): string => formatLength(a.mm, units)
  const fine = (a: Amount): string => formatStep(a.mm, units)
  const sum = (a: Amount): string => inFull(a, units)
  switch (step.verb) {
    case 'start':
      return `Mark ${step.at}: ${step.why}.`
    case 'measure': {
      const level = step.level ? ` Square out: the ${LEVEL_WORDS[step.level]}.` : ''
      const why = step.why === '' ? '' : `: ${step.why}`
      return `${WAYS[step.direction]} from ${step.from}, ${sum(step.amount)}${why}.${level}`
    }
    case 'spot':
      return `From ${step.from}, ${sum(step.across)} ${step.right ? 'out' : 'in'} and ${sum(step.upright)} ${step.down ? 'down' : 'up'}: ${step.why}.`
    case 'compass':
      return `Compass in ${step.centre}, open to ${sum(step.amount)}. Mark ${step.to} where it meets the level of ${step.level}: ${step.why}.`
    case 'slide':
      return step.away
        ? `Lengthen the line ${step.along}–${step.from} past ${step.from} by ${fine(step.amount)}: ${step.why}.`
        : `From ${step.from} towards ${step.along}, ${fine(step.amount)}: ${step.why}.`
    case 'join':
      return `Rule ${step.from} to ${step.to}: the ${EDGE_WORDS[step.edge]}, ${step.why}.`
    case 'arc':
      return `Compass in ${step.centre}, open to ${fine(step.amount)}. Swing from ${step.from} to ${step.to}: the ${EDGE_WORDS[step.edge]}, ${step.why}.`
    case 'curve':
      return `Draw the ${EDGE_WORDS[step.edge]} from ${step.from} to ${step.to}, ${step.why}. ${guideWords(step.base, step.along, step.guides, units)}`
    case 'dart': {
      const low =
        step.atHem.mm > 0
          ? `Below, rule towards a tip ${fine(step.down)} down and stop at the hem, ${say(step.atHem)} wide there: the dart runs out open`
          : `Lower tip ${fine(step.down)} below`
      return `The dart: ${fine(step.width)} wide at ${step.at}, half on either side. Upper tip ${fine(step.up)} above ${step.at}. ${low}; ${step.why}.`
    }
    case 'edgeDart':
      return `Rule ${step.upper} and ${step.lower} to ${step.tip}: the ${DART_WORDS[step.name]} in the ${EDGE_WORDS[step.edge]}, ${say(step.width)} wide, ${step.why}.`
    case 'trace':
      return `Lay paper over the ${PIECE_WORDS[step.of]} and trace ${listed(step.edges.map((e) => `the ${EDGE_WORDS[e]}`))}: ${step.why}.`
    case 'parallel':
      return `Measure ${fine(step.by)} square from the ${EDGE_WORDS[step.to]} at every finger’s width and draw through the marks: the ${EDGE_WORDS[step.edge]}, ${step.why}.`
    case 'rectangle':
      return `Rule a rectangle ${fine(step.long)} long (${inWords(step.long, units)}) and ${fine(step.wide)} wide: ${step.why}.`
    case 'mitre':
      return mitreSentence(step, fine)
    case 'open':
      return `Mark the ${step.words}, ${say(step.long)} long: ${step.why}.`
    case 'moveDart':
      return (
        `Q is where the middle line of the dart passes the bust tip. Mark ${step.at} on the ${EDGE_WORDS[step.edge]}, ${fine(step.along)} from ${step.end} along it. ` +
        `Rule ${step.at} to ${step.pivot} and cut along the line, not through ${step.pivot}. ` +
        `Fold the dart in the ${EDGE_WORDS[step.from]} shut until the cut stands open by ${fine(step.opens)} at its edge. ` +
        `The new tip lies on the middle line, ${fine(step.tip)} from ${step.pivot}: ${step.why}.`
      )
    case 'part':
      return `Cut the piece apart along the inner and the outer leg of its darts, from the ${EDGE_WORDS[step.from]} over ${step.over} to the ${EDGE_WORDS[step.to]}: ${step.why}.`
    case 'cutOff':
      return `Cut the piece off along the ${LEVEL_WORDS[step.along]}, from ${step.at} to the centre: ${step.why}.`
    case 'keyhole':
      return `Mark the foot of the keyhole ${fine(step.long)} below ${step.from} on the centre, and its widest place ${fine(step.half)} out at ${fine(step.down)} below ${step.from}. Draw a drop from ${step.from} through it, round to the foot: ${step.why}.`
    case 'asWorn':
      return AS_WORN[step.how](step.side, step.why)
    case 'change':
      return `${step.words}, ${say(step.amount)}: ${step.why}.`
    case 'wedge':
      return (
        `Mark P on the ${EDGE_WORDS[step.edge]}, ${say(step.at)} from ${step.from} along the edge. Rule P to the ${step.pivot}. ` +
        `Mark ${say({ ...step.width, mm: halved(step.width.mm) })} either side of P and rule both to the ${step.pivot}. ` +
        `Cut from the hem up the middle of the waist dart to the ${step.pivot}, not through it. Fold the wedge shut. ` +
        `The dart opens by ${say(step.opens)} at the waist; the ${EDGE_WORDS[step.edge]} is ${say(step.shortens)} shorter once drawn smooth. ${step.why}.`
      )
  }
}

const AS_WORN: Readonly<
  Record<Extract<Act, { verb: 'asWorn' }>['how'], (side: string, why: string) => string>
> = {
  first: (side, why) => `First the ${side} half, as worn: ${why}.`,
  other: (side, why) =>
    `Turn the paper over, trace the centre line and A through and draw the ${side} half on this side; its letters carry a stroke, U′; on the centre line they are those of the first half. Then trace it through to the first side: ${why}.`,
  over: (side, why) =>
    `Draw it as told above, then turn the paper over: so it lies as worn on the ${side}: ${why}.`,
}

const listed = (words: readonly string[]): string =>
  words.length < 2
    ? words.join('')
    : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1] ?? ''}`

const WAYS: Readonly<Record<Direction, string>> = {
  down: 'Down',
  up: 'Up',
  right: 'Square out',
  left: 'Square in',
}

function guideWords(
  base: string,
  along: Direction,
  guides: readonly Guide[],
  units: UnitChoice,
): string {
  const spots = guides.map((g) => {
    const [out, by] = [formatLength(g.out.mm, units), formatLength(g.by.mm, units)]
    return /[1-9]/.test(by)
      ? `${out} ${THEN[along]} and ${by} ${SIDE[g.then]}`
      : `${out} ${THEN[along]}`
  })
  return `Guide points from ${base}: ${spots.join('; ')}.`
}
const THEN: Readonly<Record<Direction, string>> = {
  down: 'down',
  up: 'up',
  right: 'out',
  left: 'in',
}
const SIDE: Readonly<Record<Direction, string>> = {
  down: 'down',
  up: 'up',
  right: 'out',
  left: 'in',
}

const halved = (length: Amount['mm']): Amount['mm'] => (length / 2) as Amount['mm']

/** On the strip alone, by ruler: where the mitre lies, what is left on the seam line, how it is sewn. */
function mitreSentence(
  { out, apart, side, sewnAt, angle, why }: Extract<Act, { verb: 'mitre' }>,
  fine: (a: Amount) => string,
): string {
  const slant = `${Math.round(toDegrees(angle))}° off the long edges`
  const place = apart
    ? `Mark the middle of both long edges, and on both ${fine(apart)} either side of it: there the corners come. At each corner mark, on the edge that is sewn on, mark ${fine(out)} either side of it, and rule both marks to the corner mark of the other edge: the mitre, ${slant}. `
    : `Mark the middle of both long edges. On the edge that is sewn on, mark ${fine(out)} either side of the middle, and rule both marks to the middle of the other edge: the mitre, ${slant}. `
  const fold = apart ? 'at each corner mark' : 'across its middle'
  return (
    place +
    `On the seam line, ${fine(sewnAt)} inside that edge, each side is ${fine(side)} long from the mitre to its end. ` +
    `Fold the strip ${fold}, right sides together, sew the two lines together from the other edge as far as the seam line, and trim to ${fine(sewnAt)}: ${why}.`
  )
}
