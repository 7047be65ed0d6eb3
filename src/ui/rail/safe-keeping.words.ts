/** Her work as a file, and what the browser promises of it. */
export const SAFE_WORDS = {
  title: 'Safe keeping',
  room: (usedBytes: number, quotaBytes: number) =>
    `${(usedBytes / 1e6).toFixed(1)} MB of ${(quotaBytes / 1e9).toFixed(1)} GB used`,
  about:
    'Everything lies in this browser on this device. A file of it is your second copy; it leaves the device only where you put it.',
  fullLead: 'The room for this page is nearly used up.',
  full: 'Save everything to a file, then let photos go whose numbers are kept.',
  promised: 'This browser has promised to keep the work when the device gets full.',
  notPromisedLead: 'This browser has not promised to keep the work.',
  notPromised:
    'When the device gets full, or after weeks without a visit, it may clear it. Save a file now and then; a page put on the home screen is mostly kept.',
  ask: 'Ask it to keep the work',
  withPhotos: 'with the photos that are still kept, closed with a passphrase',
  newPassphrase: (characters: number) => `Passphrase, ${characters} characters or more`,
  save: 'Save everything to a file',
  /** The name of the file; `day` as 2026-11-25. */
  file: (day: string) => `tapetrue-${day}.json`,
  readBack: 'Read a file back',
  bringOver: 'Bring over from another device',
  closedFile: 'This file is closed. Its passphrase',
  open: 'Open the file',
  leave: 'Leave it closed',
  done: 'Done.',
  notDone: 'Not done.',
  savedClosed:
    'The closed file is saved. Without the passphrase nobody opens it, this page neither: write it down where the file is not.',
  saved: 'The file is saved. Keep it where you would look for it.',
  read: (garments: number, rounds: number, photos: number, copies: readonly string[]) =>
    `Read back: garments ${garments}, rounds ${rounds}, photos ${photos} new. ${
      copies.length > 0
        ? `Hung beside as copies: ${copies.join(', ')}.`
        : 'Nothing was written over.'
    }`,
  unreadable: (count: number) =>
    count === 1 ? 'One kept record could not be read.' : `${count} kept records could not be read.`,
  /** `reason` is a sentence. */
  keptAside: (reason: string) =>
    `What could not be read is kept aside and goes into every backup. ${reason}`,
}
