/** The darted bodice block and the sleeveless blouse made from it. */
import { knows, lengthOf, type Body } from '../../measurements/confirmed.ts'
import { pathLength } from '../../geometry/length.ts'
import { lengthTo } from '../../geometry/path.ts'
import { project } from '../../geometry/project.ts'
import { selfIntersections } from '../../geometry/self-intersection.ts'
import { mm } from '../../units/length.ts'
import { BODICE_NEEDS, BODICE_USES, drawBodice } from '../blocks/bodice.ts'
import { drawSleeve, type Armholes } from '../blocks/sleeve.ts'
import type { ChoiceId, Choices } from '../choices.ts'
import { completed, opened } from '../completed.ts'
import { pieceOf, type Draft } from '../draft.ts'
import { say, type Finding } from '../finding.ts'
import { finished } from '../finished.ts'
import type { DrawnPiece, Garment } from '../garment.ts'
import { edge, namedPoint, outline, type Piece } from '../piece.ts'
import { armholeJoin, gettingIn, neckJoin, pair, SEAM_EQUAL, soundness } from '../proof.ts'

const CHOICES: readonly ChoiceId[] = [
  'easeBust',
  'easeWaist',
  'easeHighHip',
  'easeHip',
  'frontShare',
  'sideNeckRise',
  'frontRaise',
  'frontShort',
  'acrossEase',
  'shoulderDart',
  'underarmDrop',
  'lengthAdded',
  'lengthBelowWaist',
  'sideIntake',
  'centreBackMost',
  'frontDartTip',
  'backDartTip',
  'frontDartLow',
  'backDartLow',
]

const draw = (body: Body, choices: Choices): readonly DrawnPiece[] => {
  const { back, front } = drawBodice(body, choices)
  return [
    { sheet: back, words: 'Back, half', cutting: 'Cut 1 on the fold' },
    { sheet: front, words: 'Front, half', cutting: 'Cut 1 on the fold' },
  ]
}

function proof(d: Draft): readonly Finding[] {
  const [back, front] = [pieceOf(d, 'back'), pieceOf(d, 'front')]
  return [
    ...[back, front].flatMap(soundness),
    ...pair(back, front, 'shoulder', 'shoulderPair'),
    ...pair(back, front, 'side', 'sidePair'),
    ...neckJoin(back, front),
    ...armholeJoin(back, front),
    ...gettingIn(back, front, d),
    ...armhole(back, front, d),
    ...across(back, front, d),
  ]
}

/** Tight sleeveless armholes still clear the arm: an armhole measures a quarter more than the arm. From memory. */
const ARMHOLE_TO_ARM = 1.25
function armhole(back: Piece, front: Piece, { body }: Draft): Finding[] {
  const round = pathLength(edge(back, 'armhole').path) + pathLength(edge(front, 'armhole').path)
  if (!knows(body, 'upperArmGirth'))
    return [say('upperArmUnknown', 'muslin', 'front.armhole', round)]
  const need = lengthOf(body, 'upperArmGirth') * ARMHOLE_TO_ARM
  return round < need ? [say('armholeSmall', 'note', 'front.armhole', round, need)] : []
}

function across(back: Piece, front: Piece, { body }: Draft): Finding[] {
  return [back, front].flatMap((piece) => {
    const [z, u] = [namedPoint(piece, 'Z'), namedPoint(piece, 'U')]
    const id = piece.id === 'back' ? 'acrossBack' : 'acrossChest'
    return [
      ...(z.x > u.x - 5 ? [say('acrossWide', 'stop', `${piece.id}.armhole`, z.x, u.x)] : []),
      ...(knows(body, id) ? [] : [say('acrossUnknown', 'muslin', `${piece.id}.armhole`, z.x)]),
    ]
  })
}

export const BLOCK: Garment = {
  id: 'block',
  name: 'Bodice block',
  what: 'The body’s own shape in paper, with side bust dart, waist darts and back shoulder dart. Sew it as a muslin and fit it first; other garments are drawn from it.',
  notFor: 'Not for knits, and no garment to wear: its ease is for standing and breathing.',
  needs: BODICE_NEEDS,
  uses: BODICE_USES,
  choices: CHOICES,
  options: ['construction', 'shaping', 'surplus', 'opening'],
  // 10 cm round the bust: a close British block and the older proportional one.
  standard: {
    easeBust: mm(25),
    easeWaist: mm(12),
    easeHighHip: mm(14),
    easeHip: mm(14),
    sideNeckRise: mm(20),
    underarmDrop: mm(15),
    opening: 'backZip',
  },
  draw,
  complete: opened,
  prove: proof,
}

export const SLEEVELESS: Garment = {
  ...BLOCK,
  id: 'sleeveless',
  name: 'Sleeveless blouse',
  what: 'Woven, close at the armhole, with side bust dart and waist darts; neck and armholes finished with bias strips or facings.',
  notFor: 'Not for knits, or for a sleeve: its armhole is too high and too close for one.',
  choices: [...CHOICES, 'facingWidth', 'stripWidth', 'buttonOverlap'],
  options: ['construction', 'shaping', 'surplus', 'opening', 'neckFinish'],
  // 50, 25 and 50 mm round: the close sleeveless preset of the ease tables.
  standard: {
    ...BLOCK.standard,
    easeBust: mm(13),
    easeWaist: mm(7),
    easeHighHip: mm(13),
    easeHip: mm(13),
    acrossEase: mm(0),
    underarmDrop: mm(10),
    opening: 'auto',
  },
  complete: completed,
}

/** Body and sleeve in one; "bodice muslin first": the sleeve is drawn from the corrected armhole. */
function withSleeve(d: Draft): Draft {
  const whole = completed(d)
  const made = drawSleeve(d.body, d.choices, armholesOf(whole))
  const bodied = whole.pieces.filter((p) => p.id !== 'armholeStrip')
  const steps = whole.steps.filter((s) => s.piece !== 'armholeStrip')
  if (!made.ok) return { ...whole, pieces: bodied, steps }
  const piece = finished({
    sheet: made.sheet,
    words: 'Sleeve, whole',
    cutting: 'Cut 2, one turned over',
  })
  const rests = Object.entries(made.sheet.provenance).map(
    ([name, list]) => [`sleeve.${name}`, list] as const,
  )
  const [back, front, ...finishing] = bodied.map(taking)
  return {
    ...whole,
    pieces: [...(back ? [back] : []), ...(front ? [front] : []), piece, ...finishing],
    steps: [...steps, ...made.sheet.steps],
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
    const long = pathLength(path)
    return { long, notch: long - lengthTo(path, project(path, namedPoint(piece, 'Z')).place) }
  }
  const [b, f] = [of('back'), of('front')]
  return { back: b.long, front: f.long, backNotch: b.notch, frontNotch: f.notch }
}

function sleeveProof(d: Draft): readonly Finding[] {
  const { back, front } = armholesOf(d)
  const sleeve = d.pieces.find((p) => p.id === 'sleeve')
  if (!sleeve) {
    const width = knows(d.body, 'upperArmGirth')
      ? lengthOf(d.body, 'upperArmGirth') + d.choices.armRoom
      : 0
    return [...proof(d), say('capUnsolved', 'stop', 'front.armhole', back + front, width)]
  }
  const long = (name: 'cap' | 'frontSeam' | 'backSeam'): number =>
    pathLength(edge(sleeve, name).path)
  const ease = long('cap') - back - front
  const seams = Math.abs(long('frontSeam') - long('backSeam'))
  return [
    ...proof(d),
    ...(Math.abs(ease - d.choices.capEase) > SEAM_EQUAL
      ? [say('capPair', 'stop', 'sleeve.cap', ease, d.choices.capEase)]
      : []),
    ...(seams > SLEEVE_SEAMS
      ? [say('sleevePair', 'note', 'sleeve.frontSeam', seams, SLEEVE_SEAMS)]
      : []),
    ...(selfIntersections(outline(sleeve)).length > 0
      ? [say('outlineCrosses', 'stop', 'sleeve.cap')]
      : []),
  ]
}
/** The back seam may be eased to the front one by this, mm: 3 to 5 at the elbow, from memory. */
const SLEEVE_SEAMS = 5

export const SLEEVED: Garment = {
  ...SLEEVELESS,
  id: 'sleeve',
  name: 'Blouse with a set-in sleeve',
  what: 'Woven, with a sleeve set into the armhole of the fitted body. Fit the body first; the sleeve follows its armhole.',
  notFor: 'Not for knits, two-piece sleeves or collars.',
  needs: [...BODICE_NEEDS, 'upperArmGirth'],
  uses: BODICE_USES.filter((id) => id !== 'upperArmGirth'),
  choices: [...SLEEVELESS.choices, 'armRoom', 'capEase', 'sleeveLength', 'sleeveHem'],
  standard: {
    ...BLOCK.standard,
    easeBust: mm(22),
    easeWaist: mm(14),
    easeHighHip: mm(19),
    easeHip: mm(19),
    opening: 'auto',
  },
  complete: withSleeve,
  prove: sleeveProof,
}
