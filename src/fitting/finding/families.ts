/**
 * Concepts that stand in for each other: a place that is strained, snug or too small says the
 * same of the draft. A family lets what is known of one word serve its neighbours.
 */
import type { ConceptId } from './lexicon.ts'

const FAMILIES: Readonly<Record<string, readonly ConceptId[]>> = {
  Tight: ['tight', 'strain', 'pull', 'grip', 'dig', 'small', 'narrow', 'burst'],
  Loose: ['loose', 'extra', 'pinch', 'big', 'wide', 'empty', 'hang'],
  Away: ['gape', 'open', 'stickOut', 'stickUp'],
  Folds: ['fold', 'bunch'],
  Lumps: ['pucker', 'bubble', 'bulge', 'pointy'],
  Up: ['rise', 'up', 'high', 'short'],
  Down: ['sag', 'low', 'down', 'long'],
  Crooked: ['tilt', 'uneven', 'twist', 'sCurve'],
  Travels: ['slide', 'swing'],
  Neck: ['neck', 'vNeck', 'frontNeck', 'nape', 'collar', 'throat', 'neckSide'],
  BackNeck: ['nape', 'collar', 'hump', 'spine'],
  Shoulder: ['shoulder', 'shoulderTip', 'shoulderSeam', 'shoulderLength'],
  Armhole: ['armhole', 'frontArmhole', 'backArmhole', 'underarm'],
  Sleeve: ['sleeve', 'sleeveCap', 'sleeveHem', 'sleeveSeam', 'upperArm', 'cutInSleeve', 'overarm'],
  Bust: ['bust', 'apex', 'cup', 'fullBust', 'smallBust'],
  Chest: ['chest', 'upperChest', 'collarbone', 'hollowChest', 'narrowChest'],
  Dart: ['dart', 'bustDart', 'waistDart', 'fishEye', 'dartTip'],
  Back: ['back', 'upperBack', 'blade', 'backArmhole'],
  LowBack: ['lowerBack', 'backWaist', 'hollowBack'],
  Waist: ['waist', 'backWaist', 'frontWaist'],
  Hip: ['hip', 'seat', 'widerHips'],
  Belly: ['tummy', 'looksPregnant'],
  Hem: ['hem', 'frontHem', 'backHem'],
}
const FAMILIES_OF = new Map<ConceptId, string[]>()
for (const [family, members] of Object.entries(FAMILIES))
  for (const member of members)
    FAMILIES_OF.set(member, [...(FAMILIES_OF.get(member) ?? []), family])

export const familiesOf = (id: ConceptId): readonly string[] => FAMILIES_OF.get(id) ?? []
