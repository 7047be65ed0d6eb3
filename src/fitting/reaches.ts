/**
 * Names of the lengths on a half piece that the rules read, mm: what a case may give instead of
 * a whole draft, and what is measured on a draft when there is one. A key is read without regard
 * to capitals, spaces and strokes; every other name it may go by stands beside it.
 */
const row = (means: string, ...also: readonly string[]) => ({ means, also })

// prettier-ignore
export const REACHES = {
  apexToNeck: row('bust tip to the pinned place on the neck edge', 'r', 'rNeck', 'apexToNeckEdge', 'apToNeck', 'neckRadius'),
  apexToArmhole: row('bust tip to the pinned place on the armhole or sleeve edge', 'r', 'rArmhole', 'apexToSleeveEdge', 'apexToArmholeEdge', 'apToArmhole', 'armholeRadius', 'apexToEdge'),
  apexToShoulder: row('bust tip to the shoulder seam', 'r', 'apToShoulder'),
  apexToWaist: row('bust tip to the mouth of the waist dart: its leg', 'R', 'dartLeg', 'dartLegWaist', 'waistDartLeg', 'apexToWaistline', 'apexToWaistDart', 'frontDartLeg', 'receiverRadius', 'apexToDart', 'apToWaist', 'apexToDartMouth', 'dartLegLength'),
  apexToSide: row('bust tip to the side seam along the bust dart', 'L', 'R', 'dartLegSide', 'bustDartLeg', 'sideDartLeg', 'apexToSideSeam', 'dartLeg', 'apToSide', 'receiverRadius', 'apexToDart'),
  hingeAcross: row('hinge on the lower third of the armhole, beside the bust tip', 'dx', 'hingeDx', 'hingeX'),
  hingeUp: row('the same hinge, above the bust tip', 'dy', 'hingeDy', 'hingeY'),
  bladeToNeck: row('blade point to the pinned place on the back neck', 'r', 'bladeToBackNeck', 'bladeToNeckEdge', 'sbToNeck'),
  bladeToArmhole: row('blade point to the pinned place on the back armhole', 'r', 'bladeToBackArmhole', 'bladeToSleeveEdge', 'sbToArmhole'),
  bladeToShoulder: row('blade point to the shoulder seam, where a shoulder dart opens', 'R', 'shoulderDartLeg', 'dartLegShoulder', 'dartLeg', 'bladeToShoulderDart', 'receiverRadius', 'sbToShoulder'),
  bladeToWaist: row('blade point to the mouth of the back waist dart', 'bladeToWaistDart', 'backDartLeg', 'sbToWaist'),
  chestWidth: row('centre front to the armhole at the upper chest: centre to hinge', 'd', 'cfToArmhole', 'centreFrontToArmhole', 'edgeToHinge', 'frontHingeDepth', 'hingeDistance', 'slashLength', 'cfToHinge', 'acrossChestHalf'),
  backWidth: row('centre back to the armhole at the blade: centre to hinge', 'd', 'cbToArmhole', 'centreBackToArmhole', 'edgeToHinge', 'backHingeDepth', 'hingeDistance', 'slashLength', 'cbToHinge', 'acrossBackHalf'),
  backWaistWidth: row('centre back to the side seam above the waist: centre to hinge', 'd', 'cbToSide', 'centreBackToSide', 'cbToSideSeam', 'edgeToHinge', 'hingeDistance', 'slashLength', 'cbToHinge'),
  frontWaistWidth: row('centre front to the side seam at the waist: centre to hinge', 'd', 'cfToSide', 'centreFrontToSide', 'cfToSideSeam', 'edgeToHinge', 'hingeDistance', 'slashLength', 'cfToHinge'),
  overarm: row('side neck to the sleeve edge along the overarm: the radius of a swing', 'R', 'overarmLength', 'hemRadius', 'sleeveRadius', 'radius', 'sideNeckToSleeveEdge', 'Lc', 'spToHem'),
  frontWaistDart: row('mouth of the front waist dart', 'frontDart', 'waistDart', 'frontWaistDartMouth', 'frontDartMouth', 'dartMouth', 'mouth'),
  backWaistDart: row('mouth of the back waist dart', 'backDart', 'backWaistDartMouth', 'backDartMouth', 'dartMouth', 'mouth'),
  bustDart: row('mouth of the side bust dart', 'sideDart', 'bustDartMouth', 'sideDartMouth', 'dartMouth', 'mouth'),
  dartTip: row('bust tip to the tip of the dart as it is drawn; negative past it', 'tipToApex', 'tipOffset', 'dartTipToApex', 'offset'),
  dartTipWanted: row('bust tip to the tip of the dart as wanted', 'wantedTip', 'tipWanted', 'wantedOffset'),
  frontArmhole: row('front armhole along the curve', 'armholeFront', 'frontArmholeLength', 'ahFront'),
  backArmhole: row('back armhole along the curve', 'armholeBack', 'backArmholeLength', 'ahBack'),
  armhole: row('whole armhole along the curve', 'armholeLength', 'armholeGirth'),
  cap: row('sleeve cap along the curve', 'capLength', 'sleeveCap', 'capSeam'),
  capEase: row('cap longer than armhole', 'ease', 'capEaseNow'),
  capEaseWanted: row('cap ease that the cloth takes', 'targetEase', 'targetCapEase', 'easeWanted', 'wantedEase'),
  biceps: row('width of the sleeve at the upper arm', 'bicepsWidth', 'sleeveWidth', 'W', 'upperArmWidth'),
  upperArm: row('the upper arm itself', 'upperArmGirth', 'arm', 'armGirth'),
  bustEase: row('sewn bust round the body less the body', 'easeBust', 'easeAtBust', 'bustEaseTotal', 'ease'),
  waistEase: row('sewn waist round the body less the body', 'easeWaist', 'easeAtWaist', 'waistEaseTotal'),
  hipEase: row('sewn hip round the body less the body', 'easeHip', 'easeAtHip', 'hipEaseTotal'),
  bustBody: row('the bust by tape', 'bodyBust', 'bustGirth', 'bust', 'bustMeasured'),
  waistBody: row('the waist by tape', 'bodyWaist', 'waistGirth', 'waist', 'waistMeasured'),
  hipBody: row('the hip by tape', 'bodyHip', 'hipGirth', 'hip', 'hipMeasured'),
  bustDraft: row('round the draft at the bust, sewn', 'draftBust', 'bustOfDraft', 'garmentBust', 'bustGarment', 'bustFinished', 'finishedBust', 'muslinBust', 'bustSewn', 'sewnBust'),
  waistDraft: row('round the draft at the waist, sewn', 'draftWaist', 'garmentWaist', 'waistGarment', 'finishedWaist', 'waistFinished', 'muslinWaist', 'sewnWaist'),
  hipDraft: row('round the draft at the hip, sewn', 'draftHip', 'garmentHip', 'hipGarment', 'finishedHip', 'hipFinished', 'muslinHip', 'sewnHip'),
  apexSpacing: row('bust tip to bust tip on the body', 'spanBody', 'apexSpan', 'bustSpan', 'bodySpan'),
  apexSpacingDraft: row('bust tip to bust tip on the draft', 'spanDraft', 'draftSpan', 'draftApexSpacing', 'apexSpanDraft'),
  edgeDrafted: row('the complained-of edge as drafted', 'draftedEdge', 'edgeDraft', 'draftEdge', 'drafted', 'neckDrafted', 'armholeDrafted', 'draftedNeck', 'draftedArmhole', 'neckEdgeDrafted', 'armholeEdgeDrafted', 'draftNeck', 'draftArmhole', 'neckDraft', 'armholeDraft', 'edgeAsDrafted', 'neckEdgeDraft', 'armholeEdgeDraft', 'draftNeckEdge', 'draftArmholeEdge'),
  edgeSewn: row('the same edge as it is sewn now', 'sewnEdge', 'sewn', 'neckSewn', 'armholeSewn', 'sewnNeck', 'sewnArmhole', 'neckEdgeSewn', 'armholeEdgeSewn', 'edgeAsSewn', 'sewnNeckEdge', 'sewnArmholeEdge'),
  sewnLonger: row('how much longer the edge is sewn than drafted', 'edgeStretch', 'stretch', 'stretched', 'sewnMinusDrafted', 'stretchedBy'),
  testSquare: row('the printed test square as she measures it, when 100 was meant', 'square', 'printedSquare', 'squareMeasured'),
} as const satisfies Record<string, { means: string; also: readonly string[] }>

export type ReachName = keyof typeof REACHES
export type Reaches = Readonly<Partial<Record<ReachName, number>>>
const isReach = (name: string): name is ReachName => Object.hasOwn(REACHES, name)

const plain = (key: string): string => key.replace(/[^A-Za-z0-9]/g, '')
/** r and R are two lengths; every other name is read without regard to capitals. */
const matches = (key: string, name: string): boolean =>
  name.length === 1 || key.length === 1 ? key === name : key.toLowerCase() === name.toLowerCase()

export interface ReadReaches {
  readonly reaches: Reaches
  readonly unknown: readonly string[]
}

/**
 * Lengths by any of their names. A name that several lengths go by, as r does, gives each of them,
 * unless one is given under its own name.
 */
export function readReaches(given: Readonly<Record<string, number>>): ReadReaches {
  const own: Partial<Record<ReachName, number>> = {}
  const lent: Partial<Record<ReachName, number>> = {}
  const unknown: string[] = []
  for (const [key, value] of Object.entries(given)) {
    const word = plain(key).replace(/_?mm$/i, '')
    const named = Object.keys(REACHES).filter(isReach)
    const itself = named.find((name) => matches(word, name))
    if (itself) own[itself] = value
    const others = named.filter((name) => REACHES[name].also.some((a) => matches(word, a)))
    for (const name of others) lent[name] ??= value
    if (!itself && others.length === 0) unknown.push(key)
  }
  return { reaches: { ...lent, ...own }, unknown }
}
