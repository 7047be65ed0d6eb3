/**
 * How wide the camera looks: what the photo's own data says, else what phones usually have, with
 * an uncertainty of its own. Focal lengths in px of the picture.
 */
export interface Focal {
  readonly px: number
  /** Standard deviation as a share. */
  readonly sdShare: number
}

/**
 * In lengths of the picture's long side: a field of 67.5 degrees along it, between the 69.4 degrees
 * of a lens "26 mm" on 36 mm film (common in phones, from memory) and longer ones.
 */
const USUAL = 0.748
/** Fields of 60 to 75 degrees are met: the focal length strays by this share. */
const USUAL_SD = 0.07
/** A photo's own data gives whole millimetres of film, about 26 (Exif 2.32, FocalLengthIn35mmFilm). */
const STATED_SD = 0.02

export function focalOf(
  size: { readonly width: number; readonly height: number },
  stated?: number,
): Focal {
  if (stated !== undefined && stated > 0) return { px: stated, sdShare: STATED_SD }
  return { px: USUAL * Math.max(size.width, size.height), sdShare: USUAL_SD }
}
