/** Direction words as a German hand reads them: "nach außen" is away from the fold. */
import { inFull, inWords, type Amount } from '../units/amount.ts'
import { toDegrees } from '../units/angle.ts'
import { formatLength, formatStep, type UnitChoice } from '../units/format.ts'
import { germanNoun, undListed } from '../units/german-noun.ts'
import { mm } from '../units/length.ts'
import { DARTS, EDGES, LEVELS, PIECES } from './piece.words.de.ts'
import type { Side } from './piece.ts'
import type { sentence as English } from './sentence.words.ts'
import type { Act, Direction, Guide } from './step.ts'

export const sentence: typeof English = (step, units) => {
  const say = (a: Amount): string => formatLength(a.mm, units)
  const fine = (a: Amount): string => formatStep(a.mm, units)
  const sum = (a: Amount): string => inFull(a, units)
  switch (step.verb) {
    case 'start':
      return `Markiere ${step.at}: ${step.why}.`
    case 'measure': {
      const level = step.level ? ` Winkle dort nach außen: ${LEVELS[step.level].der}.` : ''
      const why = step.why === '' ? '' : `: ${step.why}`
      return `Von ${step.from} ${WAYS[step.direction]}, ${sum(step.amount)}${why}.${level}`
    }
    case 'spot':
      return `Von ${step.from} ${sum(step.across)} ${step.right ? 'nach außen' : 'nach innen'} und ${sum(step.upright)} ${step.down ? 'nach unten' : 'nach oben'}: ${step.why}.`
    case 'compass':
      return `Zirkel in ${step.centre} einstechen, Öffnung ${sum(step.amount)}. Markiere ${step.to}, wo der Bogen die Höhe von ${step.level} trifft: ${step.why}.`
    case 'slide':
      return step.away
        ? `Verlängere die Linie ${step.along}–${step.from} über ${step.from} hinaus um ${fine(step.amount)}: ${step.why}.`
        : `Von ${step.from} in Richtung ${step.along}, ${fine(step.amount)}: ${step.why}.`
    case 'join':
      return `Zieh mit dem Lineal von ${step.from} nach ${step.to}: ${EDGES[step.edge].der}, ${step.why}.`
    case 'arc':
      return `Zirkel in ${step.centre} einstechen, Öffnung ${fine(step.amount)}. Schlag den Bogen von ${step.from} nach ${step.to}: ${EDGES[step.edge].der}, ${step.why}.`
    case 'curve':
      return `Zeichne ${EDGES[step.edge].den} von ${step.from} nach ${step.to}, ${step.why}. ${guideWords(step.base, step.along, step.guides, units)}`
    case 'dart': {
      const low =
        step.atHem.mm > 0
          ? `Darunter zieh mit dem Lineal zu einer Spitze ${fine(step.down)} tiefer, aber nur bis zum Saum, dort ${say(step.atHem)} breit: Der Abnäher läuft offen aus`
          : `Untere Spitze ${fine(step.down)} darunter`
      return `Der Abnäher: bei ${step.at} ${fine(step.width)} breit, je zur Hälfte nach beiden Seiten. Obere Spitze ${fine(step.up)} über ${step.at}. ${low}; ${step.why}.`
    }
    case 'edgeDart':
      return `Zieh mit dem Lineal von ${step.upper} und von ${step.lower} nach ${step.tip}: ${DARTS[step.name].der} ${EDGES[step.edge].im}, ${say(step.width)} breit, ${step.why}.`
    case 'trace':
      return `Leg Papier über ${PIECES[step.of].den} und zeichne ${undListed(step.edges.map((e) => EDGES[e].den))} durch: ${step.why}.`
    case 'parallel':
      return `Miss ${EDGES[step.to].vom} aus in fingerbreiten Abständen ${fine(step.by)} im rechten Winkel ab und zeichne durch die Marken: ${EDGES[step.edge].der}, ${step.why}.`
    case 'rectangle':
      return `Zeichne ein Rechteck, ${fine(step.long)} lang (${inWords(step.long, units)}) und ${fine(step.wide)} breit: ${step.why}.`
    case 'mitre':
      return mitreSentence(step, fine)
    case 'open':
      return `Markiere ${step.words}, ${say(step.long)} lang: ${step.why}.`
    case 'moveDart':
      return (
        `Q liegt dort, wo die Mittellinie des Abnähers am Brustpunkt vorbeigeht. Markiere ${step.at} ${EDGES[step.edge].am}, ${fine(step.along)} von ${step.end} entfernt, an der Kante entlang gemessen. ` +
        `Zieh mit dem Lineal von ${step.at} nach ${step.pivot} und schneide die Linie auf, aber nicht durch ${step.pivot} hindurch. ` +
        `Falte den Abnäher ${EDGES[step.from].im} zu, bis der Schnitt an der Kante ${fine(step.opens)} offen steht. ` +
        `Die neue Spitze liegt auf der Mittellinie, ${fine(step.tip)} von ${step.pivot}: ${step.why}.`
      )
    case 'part':
      return `Schneide das Teil am inneren und am äußeren Schenkel seiner Abnäher auseinander, ${EDGES[step.from].vom} über ${step.over} bis ${EDGES[step.to].zum}: ${step.why}.`
    case 'cutOff':
      return `Schneide das Teil an ${LEVELS[step.along].dem} ab, von ${step.at} bis zur Mitte: ${step.why}.`
    case 'keyhole':
      return `Markiere auf der Mitte den Fuß des Tropfens ${fine(step.long)} unter ${step.from} und seine breiteste Stelle ${fine(step.half)} nach außen, ${fine(step.down)} unter ${step.from}. Zeichne von ${step.from} aus einen Tropfen durch sie hindurch, rund bis zum Fuß: ${step.why}.`
    case 'asWorn':
      return AS_WORN[step.how](HALF_SAID[step.side], step.why)
    case 'change':
      return `${step.words}, ${say(step.amount)}: ${step.why}.`
    case 'wedge':
      return (
        `Markiere P ${EDGES[step.edge].am}, ${say(step.at)} von ${step.from} an der Kante entlang. Zieh mit dem Lineal von P ${PIVOT.zum}. ` +
        `Markiere ${say({ ...step.width, mm: mm(step.width.mm / 2) })} nach beiden Seiten von P und verbinde beide Marken mit ${PIVOT.dem}. ` +
        `Schneide vom Saum aus durch die Mitte des Taillenabnähers bis ${PIVOT.zum}, nicht durch ihn hindurch. Falte den Keil zu. ` +
        `Der Abnäher öffnet sich in der Taille um ${say(step.opens)}; ${EDGES[step.edge].der} ist, glatt gezeichnet, ${say(step.shortens)} kürzer. ${step.why}.`
      )
  }
}

/** Where a wedge comes to nothing. */
const PIVOT = germanNoun('m', 'Brustpunkt')

const HALF_SAID: Readonly<Record<Side, { readonly half: string; readonly on: string }>> = {
  left: { half: 'die linke Hälfte', on: 'links' },
  right: { half: 'die rechte Hälfte', on: 'rechts' },
}
const AS_WORN: Readonly<
  Record<
    Extract<Act, { verb: 'asWorn' }>['how'],
    (side: { readonly half: string; readonly on: string }, why: string) => string
  >
> = {
  first: ({ half }, why) => `Zuerst ${half}, wie getragen: ${why}.`,
  other: ({ half }, why) =>
    `Dreh das Papier um, zeichne die Mittellinie und A durch und zeichne ${half} auf dieser Seite; ihre Buchstaben tragen einen Strich, U′; auf der Mittellinie sind es die der ersten Hälfte. Dann zeichne sie auf die erste Seite durch: ${why}.`,
  over: ({ on }, why) =>
    `Zeichne es wie oben beschrieben und dreh dann das Papier um: So liegt es wie ${on} getragen: ${why}.`,
}

const WAYS: Readonly<Record<Direction, string>> = {
  down: 'nach unten',
  up: 'nach oben',
  right: 'im rechten Winkel nach außen',
  left: 'im rechten Winkel nach innen',
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
      ? `${out} ${THEN[along]} und ${by} ${THEN[g.then]}`
      : `${out} ${THEN[along]}`
  })
  return `Hilfspunkte von ${base} aus: ${spots.join('; ')}.`
}
const THEN: Readonly<Record<Direction, string>> = {
  down: 'nach unten',
  up: 'nach oben',
  right: 'nach außen',
  left: 'nach innen',
}

/** On the strip alone, by ruler. */
function mitreSentence(
  { out, apart, side, sewnAt, angle, why }: Extract<Act, { verb: 'mitre' }>,
  fine: (a: Amount) => string,
): string {
  const slant = `${Math.round(toDegrees(angle))}° zu den langen Kanten`
  const place = apart
    ? `Markiere die Mitte beider langen Kanten und auf beiden ${fine(apart)} nach jeder Seite: Dort kommen die Ecken hin. Miss bei jeder Eckmarke auf der Kante, die angenäht wird, ${fine(out)} nach beiden Seiten und verbinde beide Marken mit der Eckmarke der anderen Kante: die Gehrung, ${slant}. `
    : `Markiere die Mitte beider langen Kanten. Miss auf der Kante, die angenäht wird, ${fine(out)} nach beiden Seiten der Mitte und verbinde beide Marken mit der Mitte der anderen Kante: die Gehrung, ${slant}. `
  const fold = apart ? 'bei jeder Eckmarke' : 'quer über die Mitte'
  return (
    place +
    `Auf der Nahtlinie, ${fine(sewnAt)} innerhalb dieser Kante, ist jede Seite von der Gehrung bis zu ihrem Ende ${fine(side)} lang. ` +
    `Falte den Streifen ${fold} rechts auf rechts, näh die beiden Linien von der anderen Kante bis zur Nahtlinie aufeinander und schneide auf ${fine(sewnAt)} zurück: ${why}.`
  )
}
