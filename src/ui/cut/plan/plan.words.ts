/** The leaf of the sewing plan: ticking steps, what hangs, the kind of cloth, the drape test. */
export const PLAN_LEAF = {
  title: 'Sewing plan',
  order: 'The order',
  done: (done: number, steps: number) => `${done} of ${steps} done`,
  next: (step: number, title: string) => `Next is step ${step}, ${title}.`,
  allDone: 'Every step is done. Hang it on the rail and look at it once more.',
  anew: 'Begin the plan again',
  stepDone: (step: number) => `Step ${step} is done`,
  onPaper: 'On paper',
  save: 'Save the sewing plan (PDF)',
  saved: (name: string, pages: string) => `Saved as ${name}, ${pages}.`,
  /** Around a link. */
  inOneFile: ['With pieces, cutting plan and lists in one file:', 'on the Cloth leaf', '.'],
  inUnit: { cm: 'All in centimetres', inch: 'All in inches' },
  lengths:
    'Lengths are those of the seam line of one side. An allowance is what lies between the seam line and the cutting line. Every seam is pressed before another crosses it.',
  doneOn: (date: string) => `Done on ${date}.`,
  sewnOn: (date: string) => `Sewn on ${date}.`,
  drawing: (pieces: readonly string[]) => `${pieces.join(' and ')}, what is sewn in chalk`,
}

/** A step that hangs for a day. `from` is when she may go on: "tomorrow from 14:30". */
export const HANG_WORDS = {
  hoursYet: (hours: number) => `It hangs: ${hours} hours yet.`,
  minutesYet: (minutes: number) =>
    `It hangs: ${minutes} ${minutes === 1 ? 'minute' : 'minutes'} yet.`,
  sinceToday: 'Hanging since today.',
  clockSetBack: 'The clock of this device was set back since.',
  goOn: (from: string) => `Go on ${from}.`,
  next: (hung: number, from: string, step: number, title: string) =>
    `Step ${hung} hangs. Go on ${from} with step ${step}, ${title}.`,
  from: (day: string, time: string) => `${day} from ${time}`,
  today: 'today',
  tomorrow: 'tomorrow',
  on: (date: string) => `on ${date}`,
  sameHour: 'tomorrow at this hour',
  counted: 'when it has hung a day and a night',
  hasHung: 'It has hung long enough.',
  measure: 'Measure it again and cut what has dropped, then go on.',
}

export const KIND_WORDS = {
  title: 'The cloth',
  kind: 'Kind',
  forThisSleeve: 'For this sleeve:',
  asks: 'It asks for other finishes',
  instead: (edge: string, finish: string, old: string) => `${edge}: ${finish} instead of ${old}`,
  take: (offers: number) => `Take ${offers === 1 ? 'it' : `all ${offers}`}`,
  beforePrinting: 'Allowances change with them. Do it before the paper is printed.',
  drape: 'Drape test on a pinned square',
  drapeHow: (square: string) =>
    `Cut a square of ${square} on the grain. Pin the middle of one side to a door frame and let it hang. Measure between its two lower corners.`,
  apart: 'Lower corners apart',
  ofAnother: (apart: string, kind: string) =>
    `You read ${apart} on ${kind}. This cloth has not been tried yet.`,
}
