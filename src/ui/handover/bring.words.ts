/** Two devices side by side: codes, the four words, what goes over and what became of it. */
import type { View } from '../../capture/reading.ts'
import type { PhotoView } from '../../storage/schema/photo.ts'

export const BRING_WORDS = {
  title: 'Bring over',
  about:
    'Photos, one garment or everything, straight from one of your devices to the other: through your own network and no server.',
  exampleTitle: 'The example lies on the table.',
  example: 'Take it down first; what is brought over belongs to your own work.',
  closedTitle: 'Closed.',
  byFile:
    'The way by file stays: on the rail “Save everything to a file”, carry it over by cable, memory stick or the share sheet of your phone, and “Read a file back” on the other device. Both ways add and never write over.',
  again: 'Begin again',
  toRail: 'To the rail, for a file',
  endThis: 'End this',
  looking: 'Looking for the other device',
  lookingAbout:
    'Both codes are read. This takes a few seconds; after twenty it gives up and says why.',
  showTitle: 'This one shows first',
  show: 'Take the larger screen, or the device without a camera. It shows a square that the other one reads.',
  showKey: 'Show a code here',
  readTitle: 'This one reads first',
  read: 'Its camera reads the square of the other and it shows an answer. Without a camera the code is typed.',
  readKey: 'Read the code of the other',
}

export const CODE_SHOWN_WORDS = {
  firstTitle: 'Let the other device read this',
  first:
    'On the other device open this same page and press “Read the code of the other”. It then shows an answer.',
  readAnswer: 'Read its answer',
  answerTitle: 'Now let the first device read this answer',
  answer: 'On the first device press “Read its answer”. Once it is read, both show four words.',
  notFound: 'If it says that the two do not find each other, begin again here too.',
  square: 'The code as a square. It is written out below, for a device without a camera.',
  hold: 'Hold the camera so that the square fills half of its picture. Turn the screen bright.',
  typeIt: 'No camera on the other device? Type it there',
  groups: (count: number) =>
    `${count} groups of five. Capitals or not, blanks or not; there is no letter I, L, O or U, so 1 and 0 are digits. A slip is found in its own group.`,
  inGroups: 'The code in groups',
}

export const CODE_READ_WORDS = {
  firstTitle: 'Read the code of the other device',
  answerTitle: 'Read the answer of the other device',
  orType: 'Or type the code that the other device shows.',
  notTaken: 'Not taken.',
  noCamera: 'No camera here.',
  point: 'Point at the square on the other screen, so that it fills half of the picture.',
  opening: 'The camera is being opened.',
  picture: 'Picture of the camera',
  typed: 'Or type the code the other device shows, in groups of five',
  nothingTyped: 'Nothing is typed yet.',
  take: 'Take this code',
  back: 'Back',
}

export const COMPARED_WORDS = {
  title: 'Are these four words on both screens?',
  words: 'Four words',
  /** The words are English on every device: see handover/word-list.ts. */
  why: 'They come from the secret and from both devices. If they are the same, in the same order, nobody stands in between.',
  same: 'They are the same',
  differ: 'They differ',
  agreed: 'Agreed here. Now press the same key on the other device.',
}

export const SEND_WORDS = {
  title: 'What goes over from here?',
  joined: 'Joined',
  about:
    'Leave this page open on both devices. The other one can send in the same way; what it sends is listed below.',
  what: 'What to send',
  photos: 'Photos',
  oneGarment: 'One garment',
  everything: 'Everything',
  garment: 'Garment',
  garmentAbout:
    'The garment with all its rounds, and the tape book it is drawn from. Over there it is added; where the same garment differs, it is hung beside as a copy.',
  everythingAbout:
    'Tape book, garments, rounds and settings. Over there all of it is added to what is there; nothing is written over.',
  withPhotos: (count: number) => `with the photos that are still kept here: ${count}`,
  busy: 'Something is going over now.',
  choosePhoto: 'Choose a photo first.',
  noGarment: 'No garment hangs on the rail yet.',
  send: 'Send it over',
  sending: 'Sending',
  arriving: 'Arriving',
  stop: 'Stop sending',
  enough: 'Take no more',
  notSent: 'Not sent.',
  sentLead: 'Sent.',
  sent: 'What became of each thing is listed below, and on the other screen.',
  stoppedLead: 'Stopped.',
  stopped:
    'What went over whole is over there. Send the same again, and it goes on from where it stopped.',
  /** `word`: sending or arriving. */
  far: (word: string, at: number, of: number, name: string) => `${word} ${at} of ${of}: ${name}`,
  progress: (word: string, name: string) => `${word} ${name}`,
  megabytes: (here: number, of: number) => `${mega(here)} of ${mega(of)} MB`,
}
const mega = (bytes: number): string => (bytes / 1e6).toFixed(1)

export const PICKED_WORDS = {
  about:
    'Front, side and back lie ready in Measure over there. Others can be saved as files. Place, time and device are taken out of a photo before it goes.',
  choose: 'Choose photos',
  opening: 'They are being opened.',
  shows: 'shows',
  views: { front: 'front', side: 'side', back: 'back' } as Readonly<Record<View, string>>,
  other: 'something else',
  leaveOut: 'Leave it out',
  leaveOutLabel: (name: string) => `Leave out ${name}`,
  notOpened: 'Not opened.',
}

export const ARRIVED_WORDS = {
  here: 'Arrived here',
  sent: 'Sent from here',
  loose:
    'Photos that are not kept yet lie in this page only until it is closed. Those for Measure wait on its table; read them there, or save them as files.',
  readThere: 'Read them in Measure',
  save: (name: string) => `Save ${name}`,
  /** The name of a file, where what came has none. */
  photo: 'photo',
}

/** What becomes of a thing on the other side; told on both screens, in the language of that side. */
export const GOODS_WORDS = {
  photo: (view: PhotoView, day: string) =>
    `Photo, ${view === 'closeUp' ? 'close-up' : view}, ${day}`,
  kept: 'Kept.',
  letGoThere: 'It was let go there before, and stays so.',
  noJpeg: 'This is no JPEG photo, so it was not taken.',
  inMeasure: (view: View) => `It lies ready in Measure as the ${view} photo.`,
  asFile: 'It can be saved as a file.',
  restored: (garments: number, rounds: number, copies: readonly string[]) =>
    `New on the rail: garments ${garments}, rounds ${rounds}. The tape books are united; nothing was written over.${
      copies.length > 0 ? ` Hung beside as copies: ${copies.join(', ')}.` : ''
    }`,
}

export const STEPS_WORDS = {
  title: 'How it goes',
  step: (at: number, of: number) => `step ${at} of ${of}`,
  steps: [
    'One device shows a code, the other reads it.',
    'The other answers with a code of its own.',
    'Both show the same four words, and you say so on both.',
    'You choose what goes over, from either side.',
  ] as readonly string[],
  network:
    'Both devices have to be in one network that lets its devices speak to each other: the wireless network at home, or the phone’s own hotspot with the laptop joined to it. Guest networks mostly do not. The internet is not needed.',
  secret:
    'The code holds a secret that is used once. Each device proves that it knows it before anything goes over, all of it is encrypted on its way, and no server is asked. Leaving this page closes the connection and lets the camera go.',
}
