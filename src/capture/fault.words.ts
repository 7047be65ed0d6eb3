/**
 * What she reads when a photo cannot be measured: what is wrong, then what to do. Readings keep the
 * id, so that a kept photo says it in the language of the day.
 */
/** Of one photo among three, where it is said that it has no card. */
export const WITHOUT_CARD: string =
  'Without it the picture has no scale. Hang the printed sheet flat against the body with the whole black square in view, or tap the four corners of a bank-size card.'
const NO_PERSON =
  'No standing person was found in this photo. Stand so that head and feet are both in the picture, with light from the front, and take it again.'
const TURNED =
  'This photo lies on its side. Turn it upright in the photo program, or hold the camera upright, and choose it again.'

export const FAULT_WORDS = {
  noCard: `No card in this photo. ${WITHOUT_CARD}`,
  mirrored:
    'This photo is mirrored, so left and right are exchanged. Turn off mirroring in the camera settings, or use the back camera, and take it again.',
  twoCards:
    'More than one printed sheet is in this photo. Leave only the one that hangs against the body and take it again.',
  outOfOrder:
    'The four taps cross over. Tap the corners in turn round the card, clockwise, from its top left.',
  cardTooSmall:
    'The card is too small in this photo to give a scale. Come nearer, use a photo with more pixels, or use the printed sheet.',
  edgeUnseen:
    'An edge of the card does not stand out. Hold it by the rim in even light, on cloth of another shade, and keep the camera still.',
  cornerTooFar:
    'The card has no corner near one of the taps. Enlarge the photo and tap the four corners again, clockwise from the top left.',
  wrongShape:
    'These corners do not have the shape of the card seen from the front. Check the four corners, or turn the card flat to the camera and take the photo again.',
  pictureTooSmall:
    'This picture has too few pixels to measure in. Use the photo as the camera made it, not a small copy.',
  fourTaps: 'Tap the four corners of the card, clockwise from its top left.',
  /** Of a rectangle of her own. */
  noGoodRectangle:
    'A rectangle of that size gives no good scale. Take one with sides of 5 to 40 cm (2 to 16 in), the long side at most three times the short one, and measure both sides again.',
  turned: TURNED,
  feetCut:
    'Your feet are not in the picture. Step back, or tilt the camera down, until head and feet both show, and take the photo again.',
  headCut:
    'Your head is not in the picture. Step back, or tilt the camera up, until head and feet both show, and take the photo again.',
  twoPersons:
    'More than one person is in this photo. Stand alone in the picture, with no mirror or poster behind you, and take it again.',
  blurred:
    'This photo is blurred, so edges cannot be measured. Rest the camera on something, use the timer, stand still, and take it again.',
  againstLight:
    'The light comes from behind you, so your outline is all the photo shows. Stand with the window or lamp in front of you and take it again.',
  handsOnHips:
    'Your hands rest on your body, so its sides are hidden. Let the arms hang a little away from the hips and take the photo again.',
  noPerson: NO_PERSON,
  noPersonTurned: `${NO_PERSON} ${TURNED}`,
  notWhole:
    'The whole body is not in the picture or not standing upright. Step back until head and feet both show, and take it again.',
  noBandSide:
    'No elastic is seen at the waist in the side photo. Tie one and take the photo again, or drag the waist points to it.',
  noIndent:
    'The outline is not narrower anywhere between bust and hip, so the waist cannot be seen. Tie an elastic round your waist and take the photo again, or drag the waist point to it.',
  noTrunk:
    'No person was found in this photo, so it is not known where the cloth is. Take it from the neck to the thighs, with light from one side.',
  noCloth:
    'The cloth could not be told from the rest. A plain muslin of one colour, lit from one side, shows its folds best.',
}
