/** The passphrase of the photos: set, changed, taken off, asked for. */
export const LOCK_WORDS = {
  title: 'Photos under a passphrase',
  open: 'Photos never leave this device by themselves. Who opens this browser can see them, unless a passphrase closes them here. It is asked for each time the page is opened.',
  setKey: 'Set a passphrase',
  unlocked: 'Closed with your passphrase, open in this window.',
  lockNow: 'Lock them now',
  /** On the key that does it. */
  acts: {
    set: 'Close the photos with it',
    change: 'Change the passphrase',
    takeOff: 'Take it off',
  },
  doneLead: 'Done.',
  done: {
    set: 'Every photo kept here is closed. Write the passphrase down where this device is not: nobody opens them without it.',
    change: 'From now on the new passphrase opens the photos.',
    takeOff: 'The photos lie in the open again, as on any device.',
  },
  notDone: 'Not done.',
  notAlike: 'The two are not alike. Type the new passphrase twice, the same each time.',
  asItIs: 'Passphrase as it is',
  fresh: (characters: number) => `New passphrase, ${characters} characters or more`,
  onceMore: 'The same once more',
  forgotten: 'Forgotten, it cannot be found again: the numbers stay, the photos are gone.',
  leave: 'Leave it as it is',
  workedOut: 'The passphrase is being worked out.',
  photosOf: (done: number, all: number) =>
    `${done} of ${all} photos. Each is kept before the next: nothing is lost if the page closes.`,
}

export const LOCKED_WORDS = {
  lead: 'Your photos are locked.',
  numbersStand: 'The numbers stand without them.',
  passphrase: 'Passphrase of the photos',
  open: 'Open the photos',
  haveForgotten: 'I have forgotten it',
  notOpened: 'Not opened.',
  forgotten:
    'Nobody opens them without it, this page neither. Every number stays: tape book, drafts, rounds and what you wrote. Only the locked photos can be let go, to begin anew; a file you saved with photos still opens with its own passphrase.',
  letGo: 'Let the locked photos go for good',
  leave: 'Leave them locked',
  one: 'This photo is locked. Open your photos with their passphrase.',
  notHere: 'This photo is not in this browser. It lies where it was taken, or in a backup.',
}
