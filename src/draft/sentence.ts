/**
 * The sentence a dressmaker reads for each step: the only place where step wording lives. Ruler,
 * square and compass are all she needs.
 */
import { inWords, type Amount } from '../units/amount.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import { EDGE_WORDS } from './piece.ts'
import type { Act, Direction, Guide } from './step.ts'

/** What she reads at the left of the line: the points it joins. */
export function stepTitle(step: Act): string {
  switch (step.verb) {
    case 'start':
      return step.at
    case 'measure':
    case 'slide':
      return `${step.from}–${step.to}`
    case 'compass':
      return `${step.centre}–${step.to}`
    case 'join':
    case 'curve':
    case 'arc':
      return `${step.from}–${step.to}`
    case 'dart':
      return step.at
    case 'wedge':
      return 'P'
  }
}

export function sentence(step: Act, units: UnitChoice): string {
  const say = (a: Amount): string => formatLength(a.mm, units)
  const sum = (a: Amount): string => withWords(a, units)
  switch (step.verb) {
    case 'start':
      return `Mark ${step.at}: ${step.why}.`
    case 'measure': {
      const level = step.level ? ` Square out: the ${step.level}.` : ''
      const why = step.why === '' ? '' : `: ${step.why}`
      return `${WAYS[step.direction]} from ${step.from}, ${sum(step.amount)}${why}.${level}`
    }
    case 'compass':
      return `Compass in ${step.centre}, open to ${sum(step.amount)}. Mark ${step.to} where it meets the level of ${step.level}: ${step.why}.`
    case 'slide':
      return step.away
        ? `Lengthen the line ${step.along}–${step.from} past ${step.from} by ${say(step.amount)}: ${step.why}.`
        : `From ${step.from} towards ${step.along}, ${say(step.amount)}: ${step.why}.`
    case 'join':
      return `Rule ${step.from} to ${step.to}: the ${EDGE_WORDS[step.edge]}, ${step.why}.`
    case 'arc':
      return `Compass in ${step.centre}, open to ${say(step.amount)}. Swing from ${step.from} to ${step.to}: the ${EDGE_WORDS[step.edge]}, ${step.why}.`
    case 'curve':
      return `Draw the ${EDGE_WORDS[step.edge]} from ${step.from} to ${step.to}, ${step.why}. ${guideWords(step.base, step.along, step.guides, units)}`
    case 'dart':
      return `The dart: ${say(step.width)} wide at ${step.at}, half on either side. Upper tip ${say(step.up)} above ${step.at}, lower tip ${say(step.down)} below; ${step.why}.`
    case 'wedge':
      return (
        `Mark P on the ${EDGE_WORDS[step.edge]}, ${say(step.at)} from ${step.from} along the edge. Rule P to the ${step.pivot}. ` +
        `Mark ${say({ ...step.width, mm: halved(step.width.mm) })} either side of P and rule both to the ${step.pivot}. ` +
        `Cut from the hem up the middle of the waist dart to the ${step.pivot}, not through it. Fold the wedge shut. ` +
        `The dart opens by ${say(step.opens)} at the waist; the ${EDGE_WORDS[step.edge]} is ${say(step.shortens)} shorter once drawn smooth. ${step.why}.`
      )
  }
}

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
    const out = formatLength(g.out.mm, units)
    const by = formatLength(g.by.mm, units)
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

/** "nape to waist, 41.2 cm"; a fixed length says its number once. */
function withWords(a: Amount, units: UnitChoice): string {
  const [words, number] = [inWords(a, units), formatLength(a.mm, units)]
  return words === '' || words === number ? number : `${words}, ${number}`
}
