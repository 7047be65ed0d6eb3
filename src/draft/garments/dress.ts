/**
 * A sleeveless dress with a waist seam. The torso is drawn and corrected as a block; what is below
 * its waist is then cut off, and a skirt drawn anew from the corrected waist is sewn on.
 */
import { pathLength } from '../../geometry/length.ts'
import { lengthOf, type Body } from '../../measurements/confirmed.ts'
import { mm } from '../../units/length.ts'
import { drawRoomyBodice } from '../blocks/armhole-rule.ts'
import { drawCircleSkirt, isCircle } from '../blocks/circle-skirt.ts'
import { drawSkirt } from '../blocks/skirt.ts'
import type { Choices } from '../choices.ts'
import { between, completed, cutTwice, overlapped, withInner } from '../completed.ts'
import { pieceOf, type Draft } from '../draft.ts'
import { buttonFacing } from '../facing.ts'
import { say, type Finding } from '../finding.ts'
import { finished } from '../finished.ts'
import type { DrawnPiece, Making } from '../garment.ts'
import { edge, ON_FOLD, type HalfId, type Piece } from '../piece.ts'
import { halfTitle } from '../piece.words.ts'
import { pair, SEAM_EQUAL, soundness } from '../proof.ts'
import type { Sheet } from '../sheet.ts'
import type { Step } from '../step.ts'
import { vented } from '../vent.ts'
import { waistFacing } from '../waist-facing.ts'
import { bodiceOf, waistSeam, type WaistSeam } from '../waist-cut.ts'
import { bodiceHalves, bodiceProof } from './bodice.ts'
import { FINISHING_WORDS as W } from '../finishing.words.ts'

/** The torso is drawn this far below the hip; a correction may need cloth there. Judgement. */
const BELOW_HIP = 40

function drawTorso(body: Body, choices: Choices): readonly DrawnPiece[] {
  const { back, front } = drawRoomyBodice(body, {
    ...choices,
    lengthBelowWaist: mm(lengthOf(body, 'waistToHip') + BELOW_HIP),
  })
  return bodiceHalves(back, front)
}

const HALVES: readonly HalfId[] = ['back', 'front']

function withSkirt(d: Draft): Draft {
  const cut = d.pieces.map((p) => (p.id === 'back' || p.id === 'front' ? bodiceOf(p) : p))
  const bodice = completed({ ...d, pieces: cut, steps: [...d.steps, ...HALVES.map(cutStep(d))] })
  const [back, front] = [pieceOf(bodice, 'back'), pieceOf(bodice, 'front')]
  // From the centre, before an overlap carries it on.
  const waists = {
    back: waistSeam(bodiceOf(pieceOf(d, 'back'))),
    front: waistSeam(bodiceOf(pieceOf(d, 'front'))),
  }
  const sheets = HALVES.map((half) => skirtSheet(half, d, waists))
  const skirts = sheets.map((sheet) => opened(skirtPiece(sheet), bodice, d))
  const [skirtBack, skirtFront] = skirts
  if (!skirtBack || !skirtFront) throw new Error('dress: a skirt half is missing')
  const vents = vented([skirtBack, skirtFront], d.choices)
  const finishing = [
    ...(d.choices.waistFinish === 'facing'
      ? vents.pieces.map((p) => waistFacing(p, d.choices))
      : []),
    ...(bodice.openings.some(({ kind }) => kind === 'buttonedFront')
      ? [buttonFacing(vents.pieces[1] ?? skirtFront, d.choices)]
      : []),
  ]
  const rests = sheets.flatMap((s) =>
    Object.entries(s.provenance).map(([name, list]) => [`${s.piece}.${name}`, list] as const),
  )
  return {
    ...bodice,
    pieces: [
      back,
      front,
      ...vents.pieces,
      ...bodice.pieces.slice(2),
      ...finishing.map(({ piece }) => piece),
    ],
    steps: [
      ...bodice.steps,
      ...sheets.flatMap((s) => s.steps),
      ...vents.steps,
      ...finishing.flatMap((f) => f.steps),
    ],
    restsOn: { ...bodice.restsOn, ...Object.fromEntries(rests) },
  }
}

const cutStep =
  (d: Draft) =>
  (half: HalfId): Step => ({
    verb: 'cutOff',
    piece: half,
    at: 'W',
    along: 'waistLine',
    why: W.bodiceEndsAtWaist,
    lights: [edge(bodiceOf(pieceOf(d, half)), 'waist').path],
  })

function skirtSheet(half: HalfId, d: Draft, waists: Readonly<Record<HalfId, WaistSeam>>): Sheet {
  const rests = [
    ...new Set(HALVES.flatMap((h) => ['W', 'M'].flatMap((p) => d.restsOn[`${h}.${p}`] ?? []))),
  ]
  const { skirt } = d.choices
  return isCircle(skirt)
    ? drawCircleSkirt(
        half,
        d.choices,
        skirt,
        { back: waists.back.sewn, front: waists.front.sewn },
        rests,
      )
    : drawSkirt(half, d.body, d.choices, waists, rests)
}

const skirtPiece = (sheet: Sheet): Piece =>
  finished({
    sheet,
    words: halfTitle(sheet.piece === 'skirtBack' ? 'skirtBack' : 'skirtFront'),
    cut: ON_FOLD,
  })

/** What opens the bodice goes on into the skirt as far as it was placed. */
function opened(skirt: Piece, bodice: Draft, d: Draft): Piece {
  const waist = pieceOf(bodice, 'back').points['C']?.y ?? 0
  const half: HalfId = skirt.id === 'skirtBack' ? 'back' : 'front'
  return bodice.openings
    .filter((o) => o.piece === half && o.to > waist)
    .reduce((piece, o) => {
      switch (o.kind) {
        case 'buttonedFront':
          return cutTwice(overlapped(piece, d.choices.buttonOverlap))
        case 'backZip':
        case 'sideZip': {
          const name = o.kind === 'backZip' ? 'centre' : 'side'
          const path = between(edge(piece, name).path, 0, o.to - waist)
          const seamed: Piece = {
            ...piece,
            edges: piece.edges.map((e) => (e.name === name ? { ...e, role: 'seam' } : e)),
          }
          const words = o.kind === 'backZip' ? W.zip : W.zipLeftOnly
          return cutTwice(withInner(seamed, { name: 'zip', words, path }))
        }
        case 'keyhole':
        case 'neckSlit':
          return piece
      }
    }, skirt)
}

/** To walk in it a hem measures the hip and so much more. Common practice. */
const WALKING = 100
/** A skirt shorter than this below the waist is walked in whatever its hem, mm. Judgement. */
const SHORT = 450

function dressProof(d: Draft): readonly Finding[] {
  const [skirtBack, skirtFront] = [pieceOf(d, 'skirtBack'), pieceOf(d, 'skirtFront')]
  return [
    ...bodiceProof(d),
    ...[skirtBack, skirtFront].flatMap(soundness),
    ...pair(skirtBack, skirtFront, 'side', 'sidePair'),
    ...HALVES.flatMap((half) => waistJoin(d, half)),
    ...walking(d, skirtBack, skirtFront),
  ]
}

/** Bodice and skirt are equal along the waist, what a bias edge gives counted in; darts meet. */
function waistJoin(d: Draft, half: HalfId): Finding[] {
  const skirt = pieceOf(d, half === 'back' ? 'skirtBack' : 'skirtFront')
  const [above, below] = [waistSeam(pieceOf(d, half)), waistSeam(skirt)]
  const give = isCircle(d.choices.skirt) ? d.choices.biasGive : 0
  const gap = Math.abs(above.sewn - below.sewn - give)
  const off = below.dartsAt.flatMap((at, i) => {
    const own = above.dartsAt[i]
    return own === undefined ? [] : [Math.abs(own - at)]
  })
  const worst = Math.max(0, ...off)
  return [
    ...(gap > SEAM_EQUAL ? [say('waistPair', 'stop', `${half}.waist`, gap, SEAM_EQUAL)] : []),
    ...(worst > SEAM_EQUAL ? [say('waistDarts', 'note', `${half}.waist`, worst)] : []),
  ]
}

function walking(d: Draft, back: Piece, front: Piece): Finding[] {
  if (d.choices.lengthBelowWaist < SHORT || d.choices.ventLength > 0) return []
  const hem = 2 * (pathLength(edge(back, 'hem').path) + pathLength(edge(front, 'hem').path))
  const need = lengthOf(d.body, 'hipGirth') + WALKING
  return hem < need ? [say('hemNarrow', 'note', 'skirtFront.hem', hem, need)] : []
}

export const DRESS: Making = { draw: drawTorso, complete: withSkirt, prove: dressProof }
