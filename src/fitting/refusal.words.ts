/** Why a correction could not be made, and what to do instead. */
import { CHOICES, outOfRange } from '../draft/choices.ts'
import { DART_WORDS, EDGE_WORDS } from '../draft/piece.words.ts'
import type { Mm } from '../units/length.ts'
import type { Why } from './refusal.ts'

/** @param say a length in the unit of the sentence */
export function refusalSaid(why: Why, say: (length: Mm) => string): string {
  switch (why.id) {
    case 'choiceOutOfRange':
      return (
        outOfRange(why.choice, why.to, say) ??
        `${CHOICES[why.choice].label} cannot be turned so far.`
      )
    case 'noDart':
      return `The ${why.piece} has no waist dart to take the wedge up. Take in less at the side waist first, so that a dart is drawn.`
    case 'noEdge':
      return `The ${why.piece} of this garment has no ${EDGE_WORDS[why.edge]}. Choose an edge it has.`
    case 'wedgeTooWide':
      return `A wedge ${say(why.width)} wide does not fit a distance of ${say(why.reach)} to the apex. Pin it again, as a flat fold that ends at the apex.`
    case 'wedgeMissesEdge':
      return `The wedge runs past the end of the ${EDGE_WORDS[why.edge]}. Choose a place nearer its middle.`
    case 'edgeSlants':
      return `There the ${EDGE_WORDS[why.edge]} runs slantwise to the point the wedge ends at: closed, it takes ${say(why.most)} off the edge and not ${say(why.width)}. Pin it nearer to where a line from that point meets the edge squarely.`
    case 'dartTooWide':
      return `The ${DART_WORDS[why.dart ?? 'waistDart']} would be ${say(why.to)} wide; one dart holds ${say(why.most)}. ${
        why.dart === undefined
          ? 'Pin less this round, or take more in at the side waist first.'
          : 'Pin less this round, or use another dart as well.'
      }`
    case 'cannotDraw':
      return `After this change the ${EDGE_WORDS[why.edge]} cannot be drawn as one smooth line. Pin less this round.`
    case 'noPlace':
      return `There is no room for it on the ${why.piece}: the ${EDGE_WORDS[why.edge]} ends too near. Take less this round, or change the length or the width there first.`
    case 'noTip':
      return `The ${why.piece} has no armhole and no shoulder tip: its sleeve is cut in one. Swing the overarm, move the underarm, or change the ease instead.`
    case 'noSideDart':
      return `The ${why.piece} has no side dart to make smaller. Take the width in at the waist dart or the side instead.`
    case 'dartTooSmall':
      return `A dart of the ${why.piece} would be left ${say(why.to)} wide, which is no dart any more. Take less this round, or use the other dart.`
    case 'sideTooShort':
      return `${say(why.by)} lower, the underarm of the ${why.piece} would meet the dart under it. Move the side dart down first, or take less this round.`
    case 'nothingToWithdraw':
      return 'There is nothing to take back: that correction is not in force.'
  }
}
