/** What she reads when a card gives no scale: what is wrong, then what to do. */
export const NO_CARD =
  'No card in this photo. Without it the picture has no scale. Hang the printed sheet flat ' +
  'against the body with the whole black square in view, or tap the four corners of a bank-size card.'
export const MIRRORED =
  'This photo is mirrored, so left and right are exchanged. Turn off mirroring in the camera ' +
  'settings, or use the back camera, and take it again.'
export const TWO_CARDS =
  'More than one printed sheet is in this photo. Leave only the one that hangs against the body ' +
  'and take it again.'
export const OUT_OF_ORDER =
  'The four taps cross over. Tap the corners in turn round the card, clockwise, from its top left.'
export const TOO_SMALL =
  'The card is too small in this photo to give a scale. Come nearer, use a photo with more ' +
  'pixels, or use the printed sheet.'
export const EDGE_UNSEEN =
  'An edge of the card does not stand out. Hold it by the rim in even light, on cloth of another ' +
  'shade, and keep the camera still.'
export const CORNER_TOO_FAR =
  'The card has no corner near one of the taps. Enlarge the photo and tap the four corners again, ' +
  'clockwise from the top left.'
export const WRONG_SHAPE =
  'These corners do not have the shape of the card seen from the front. Check the four corners, ' +
  'or turn the card flat to the camera and take the photo again.'
export const PICTURE_TOO_SMALL =
  'This picture has too few pixels to measure in. Use the photo as the camera made it, not a ' +
  'small copy.'

/** Sides in mm as she gave them. */
export const NO_GOOD_RECTANGLE =
  'A rectangle of that size gives no good scale. Take one with sides of 5 to 40 cm (2 to 16 in), the ' +
  'long side at most three times the short one, and measure both sides again.'
