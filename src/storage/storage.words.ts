/** Why something was not kept, opened, saved to a file or read back, and what to do next. */
export const FULL: string =
  'There is no room left on this device, so the last change was not kept; everything before it is. Let a photo go or free some space, then do the last change again.'
export const DENIED: string =
  'This browser does not let the page keep anything. Leave the private window, or allow this page to store data in the browser settings, then reload.'
export const OVERTAKEN: string =
  'A newer version of this page is open in another window, so this one can no longer keep changes. Everything kept before is safe. Reload this page to go on.'
export const NEWER: string =
  'The work on this device was kept by a newer version of this page. Nothing was changed. Reload the page to get that version.'
export const BLOCKED: string =
  'Another window still has an older version of this page open. Nothing was changed. Close that window, then reload this one.'
export const CHANGED_ELSEWHERE: string =
  'This was changed in another window at the same time, so the last change here was not kept. What the other window kept is shown now; do yours again if you still want it.'
export const UNSURE: string =
  'The browser could not reach its storage, so the last change was not kept; everything before it is. Close other windows and reload this page.'
export const NOT_OPENED: string =
  'The browser does not open its storage for this page. Allow this page to keep data in the browser settings (cookies and site data), close other windows of it, then reload.'

export const STORE_WORDS = {
  unfit: (reason: string) => `This could not be kept. ${reason} Change it and try again.`,
  noPhoto: 'This photo is no longer kept here. Add it once more.',
  unknownPhoto:
    'This photo belongs to nothing that is kept here. Bring its garment over first, then the photo.',
  noJpeg: 'This is no photo as this page keeps them, so it was not kept.',
}

export const LOCKED: string =
  'Your photos are locked, so this was not kept. Open them with your passphrase, then do it once more.'
export const WRONG_PASSPHRASE: string =
  'This passphrase does not open the photos. Type it as you did when you set it; large and small letters differ.'
export const LOCK_SPOILT: string =
  'The lock of the photos is damaged, so no passphrase opens it any more.'

export const SEALED_WORDS = {
  tooShort: (characters: number) =>
    `A passphrase for photos has at least ${characters} characters. Four or five words you would not say in a row do well.`,
  damaged:
    'This closed file is damaged or only partly copied. Copy it again from where it was first kept. Nothing was changed.',
  wrong:
    'This passphrase does not open the file, or the file was altered. Type it as you did when you saved it. Nothing was changed.',
}

export const BACKUP_WORDS = {
  notOurs:
    'This file is no backup of this page. Choose a file that “Save everything to a file” wrote; its name ends in .json. Nothing was changed.',
  cutOff:
    'This backup file is damaged or only partly copied. Copy it again from where it was first kept, then restore it. Nothing was changed.',
  fromLater:
    'This backup was written by a newer version of this page. Reload the page to get that version, then restore it. Nothing was changed.',
  altered:
    'This backup file was altered or damaged after it was written, so its numbers cannot be trusted. Choose another copy of it. Nothing was changed.',
  lockedHere:
    'Your photos are locked, and this file holds some. Open them with your passphrase, then read the file back. Nothing was changed.',
  /** The name of a garment that is hung beside its namesake. */
  copyOf: (name: string, day: string) => `${name} (backup of ${day})`,
}
