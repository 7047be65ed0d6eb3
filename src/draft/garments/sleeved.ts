/** The blouse with a set-in sleeve: the fitted body first, the sleeve from its armhole. */
import { knows, lengthOf, type Body } from '../../measurements/confirmed.ts'
import { pathLength } from '../../geometry/length.ts'
import { lengthTo, pathEnd, pathStart } from '../../geometry/path.ts'
import { distance, type Point } from '../../geometry/point.ts'
import { project } from '../../geometry/project.ts'
import { selfIntersections } from '../../geometry/self-intersection.ts'
import { drawCappedBodice, fittedCap } from '../blocks/cap-rule.ts'
import { BELOW_UNDERARM, HAND_PASSES, WRIST_LEAST } from '../blocks/sleeve-end.ts'
import { drawSleeve, type Armholes } from '../blocks/sleeve.ts'
import type { Choices } from '../choices.ts'
import { completed } from '../completed.ts'
import { endOf, finishedEnd } from '../cuffed.ts'
import { pieceOf, type Draft } from '../draft.ts'
import { say, type Finding } from '../finding.ts'
import { finished } from '../finished.ts'
import type { DrawnPiece, Making } from '../garment.ts'
import { edge, namedPoint, outline, PAIR, sewnLength, type Piece } from '../piece.ts'
import { pieceTitle } from '../piece.words.ts'
import { SEAM_EQUAL } from '../proof.ts'
import { bodiceHalves, bodiceProof } from './bodice.ts'

/** Body and sleeve in one; "bodice muslin first": the sleeve is drawn from the corrected armhole. */
function withSleeve(d: Draft): Draft {
  const whole = completed(d)
  const made = drawSleeve(d.body, d.choices, armholesOf(whole))
  const bodied = whole.pieces.filter((p) => p.id !== 'armholeStrip')
  const steps = whole.steps.filter((s) => s.piece !== 'armholeStrip')
  if (!made.ok) return { ...whole, pieces: bodied, steps }
  const piece = finished({
    sheet: made.sheet,
    words: pieceTitle('sleeve'),
    cut: PAIR,
  })
  const ended = finishedEnd(piece, made.sheet, made.end, d.choices)
  const rests = [made.sheet, ...ended.sheets].flatMap((sheet) =>
    Object.entries(sheet.provenance).map(
      ([name, list]) => [`${sheet.piece}.${name}`, list] as const,
    ),
  )
  const [back, front, ...finishing] = bodied.map(taking)
  return {
    ...whole,
    pieces: [...(back ? [back] : []), ...(front ? [front] : []), ...ended.pieces, ...finishing],
    steps: [...steps, ...made.sheet.steps, ...ended.steps],
    restsOn: { ...whole.restsOn, ...Object.fromEntries(rests) },
  }
}

/** The armhole of a sleeved body is sewn to the cap. */
const taking = (piece: Piece): Piece => ({
  ...piece,
  edges: piece.edges.map((e) => (e.name === 'armhole' ? { ...e, role: 'seam' } : e)),
})

function armholesOf(d: Draft): Armholes {
  const of = (id: 'back' | 'front'): { long: number; notch: number } => {
    const piece = pieceOf(d, id)
    const path = edge(piece, 'armhole').path
    const at = (p: Point): number => lengthTo(path, project(path, p).place)
    const notch = at(namedPoint(piece, 'Z'))
    // A bust dart that was moved here is folded before the sleeve is set.
    const below =
      piece.edgeDarts
        .filter((x) => x.edge === 'armhole' && Math.min(at(x.upper), at(x.lower)) >= notch)
        .reduce((sum, x) => sum + distance(x.upper, x.lower), 0) + gatheredBelow(piece, at, notch)
    return { long: sewnLength(piece, 'armhole'), notch: pathLength(path) - notch - below }
  }
  const [b, f] = [of('back'), of('front')]
  const rests = ['back', 'front'].flatMap((half) =>
    ['S', 'P', 'Z', 'U'].flatMap((point) => d.restsOn[`${half}.${point}`] ?? []),
  )
  return { back: b.long, front: f.long, backNotch: b.notch, frontNotch: f.notch, rests }
}

/** What gathers on the armhole draw up between the notch and the underarm: they lie even over their stretch. */
function gatheredBelow(piece: Piece, at: (p: Point) => number, notch: number): number {
  const stretches = piece.inner.filter(({ name }) => name === 'gathers')
  return (piece.gathers ?? []).reduce((sum, { edge: on, takes }, i) => {
    const stretch = stretches[i]?.path
    if (on !== 'armhole' || !stretch) return sum
    const [from, to] = [at(pathStart(stretch)), at(pathEnd(stretch))]
    return sum + (takes * (to - Math.max(from, Math.min(to, notch)))) / (to - from)
  }, 0)
}

function drawSleeved(body: Body, choices: Choices): readonly DrawnPiece[] {
  const { back, front } = drawCappedBodice(body, choices)
  return bodiceHalves(back, front)
}

function sleeveProof(d: Draft): readonly Finding[] {
  const { back, front } = armholesOf(d)
  const sleeve = d.pieces.find((p) => p.id === 'sleeve')
  if (!sleeve) {
    const width = knows(d.body, 'upperArmGirth')
      ? lengthOf(d.body, 'upperArmGirth') + d.choices.armRoom
      : 0
    return [...bodiceProof(d), say('capUnsolved', 'stop', 'front.armhole', back + front, width)]
  }
  const long = (name: 'cap' | 'frontSeam' | 'backSeam'): number =>
    pathLength(edge(sleeve, name).path)
  const arm = lengthOf(d.body, 'upperArmGirth') + d.choices.armRoom
  const cap = fittedCap({ back, front }, arm, d.choices.capEase)
  const ease = long('cap') - back - front
  const wanted = cap?.ease ?? d.choices.capEase
  const seams = Math.abs(long('frontSeam') - long('backSeam'))
  const hem = namedPoint(sleeve, 'C').y
  return [
    ...bodiceProof(d, d.choices.armRoom),
    ...(wanted > d.choices.capEase
      ? [say('capGathered', 'note', 'sleeve.cap', wanted, d.choices.capEase)]
      : []),
    ...(cap && cap.wider > 0 ? [say('sleeveWider', 'note', 'sleeve.cap', cap.wider, arm)] : []),
    ...(hem > d.choices.sleeveLength
      ? [say('sleeveLonger', 'note', `sleeve.${endOf(sleeve).name}`, hem, BELOW_UNDERARM)]
      : []),
    ...sleeveEndProof(d, sleeve),
    ...(Math.abs(ease - wanted) > SEAM_EQUAL
      ? [say('capPair', 'stop', 'sleeve.cap', ease, wanted)]
      : []),
    ...(seams > SLEEVE_SEAMS
      ? [say('sleevePair', 'note', 'sleeve.frontSeam', seams, SLEEVE_SEAMS)]
      : []),
    ...(selfIntersections(outline(sleeve)).length > 0
      ? [say('outlineCrosses', 'stop', 'sleeve.cap')]
      : []),
  ]
}

/** The hand goes through it, the cuff goes round it, and what gave way is said. */
function sleeveEndProof(d: Draft, sleeve: Piece): readonly Finding[] {
  const { choices } = d
  const { name, path } = endOf(sleeve)
  const round = pathLength(path)
  const width = namedPoint(sleeve, 'F').x - namedPoint(sleeve, 'G').x
  const [foot, top] = [sleeve.points['M'], sleeve.points['N']]
  const slit = foot && top ? distance(foot, top) : 0
  const cuff = d.pieces.find((p) => p.id === 'cuff')
  const closed = cuff ? distance(namedPoint(cuff, 'A'), namedPoint(cuff, 'B')) : round
  const at = `sleeve.${name}`
  const wider = round > width - choices.sleeveHem + SAME
  return [
    ...(wider && choices.sleeveHem > 0
      ? [
          choices.sleeveEnd === 'hem'
            ? say('sleeveHemWider', 'note', at, round)
            : say('sleeveEndWider', 'note', at, round, WRIST_LEAST),
        ]
      : []),
    ...(slit > 0 && slit < choices.sleeveSlit - SAME
      ? [say('slitShorter', 'note', at, slit, choices.sleeveSlit)]
      : []),
    ...(closed + 2 * slit < HAND_PASSES - SAME
      ? [say('handPasses', 'stop', at, closed + 2 * slit, HAND_PASSES)]
      : []),
    ...(cuff ? cuffProof(sleeve, cuff, closed, choices) : []),
  ]
}
const SAME = 1e-6

function cuffProof(
  sleeve: Piece,
  cuff: Piece,
  closed: number,
  { cuffFullness }: Choices,
): readonly Finding[] {
  // What lies under for the button goes beyond the sleeve.
  const laps = cuff.points['C'] ? distance(namedPoint(cuff, 'B'), namedPoint(cuff, 'C')) : 0
  const gap = Math.abs(sewnLength(sleeve, 'sleeveEnd') - (sewnLength(cuff, 'sleeveEnd') - laps))
  const round = pathLength(endOf(sleeve).path)
  return [
    ...(gap > SEAM_EQUAL ? [say('cuffPair', 'stop', 'cuff.sleeveEnd', gap, SEAM_EQUAL)] : []),
    closed > round - cuffFullness + SAME
      ? say('cuffWider', 'note', 'cuff.sleeveEnd', closed, cuffFullness)
      : say('cuffRound', 'note', 'cuff.sleeveEnd', closed),
  ]
}
/** The back seam may be eased to the front one by this, mm: 3 to 5 at the elbow, from memory. */
const SLEEVE_SEAMS = 5

export const SLEEVED: Making = { draw: drawSleeved, complete: withSleeve, prove: sleeveProof }
