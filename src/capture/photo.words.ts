/** Why a file she chose, or a frame, is no photo to work with, and what to do. */
export const PHOTO_WORDS = {
  empty: 'This file is empty. Copy the photo from the camera again.',
  tooSmall: (width: number, height: number, least: number) =>
    `This photo is only ${width} by ${height} pixels. Choose the original photo, at least ${least} pixels high.`,
  tooLarge: (megapixels: number, most: number) =>
    `This photo has ${megapixels} megapixels; at most ${most} can be opened. Take it again at a smaller size, or save a smaller copy as JPEG.`,
  noRoom: 'This browser gave no room to open the photo. Close other tabs and try again.',
  noRoomReload:
    'This browser gave no room to open the photo. Close other tabs, reload the page and try again.',
  heic: 'This is a HEIC photo, which this browser cannot open. On the phone, open it and export or share it as JPEG; or set the camera to JPEG (some call it "most compatible") and take it again. Then choose that file.',
  damaged:
    'This photo is damaged or only partly copied. Copy it from the camera again, or save it anew as JPEG.',
  notAPhoto: 'This file is not a photo this browser knows. Choose a JPEG or PNG file.',
}
