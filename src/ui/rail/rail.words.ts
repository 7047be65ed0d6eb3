/** The rail: ways to begin, garments that hang, cautions. */
export const RAIL_WORDS = {
  title: 'On the rail',
  about:
    'Tapetrue drafts your blouses and dresses from your own tape numbers, corrects them muslin by muslin, and says every line for ruler and pencil.',
  notShown: (names: readonly string[]) => `Not shown: ${names.join(', ')}.`,
  notCome:
    'The part that draws them did not arrive. Nothing is lost; open the page anew when there is a network.',
  freeHook: 'A free hook',
  /** On the string tag of the hook. */
  newTag: 'new',
  hangBlouse: 'Hang a blouse',
  measureFirst: 'Measure first',
  another: 'Hang another garment',
  hang: 'Hang it',
  hangLabel: (garment: string) => `Hang: ${garment}`,
  outside: 'Outside for now: collars, linings, pockets and knits.',
  takenOff: (count: number) => `Taken off the rail: ${count}`,
  hangAgain: 'Hang it again',
}

export const FIRST_WORDS = {
  measureTitle: 'Measure me now',
  measure:
    'Three photos give starting numbers, your tape confirms them. Without a camera the tape alone does it. About half an hour.',
  measureKey: 'Measure me now',
  numbersTitle: 'I have my numbers',
  numbers:
    'Type them into the tape book, in centimetres or inches, each as you taped it twice. About ten minutes.',
  numbersKey: 'Type my numbers',
  lookTitle: 'Look first',
  look: 'An invented blouse with two finished muslins to walk through. It can be taken down again without a trace.',
  lookKey: 'Look at the example',
  lookTag: 'look',
  beingDrafted: 'It is being drafted.',
  exampleDrafted: 'The example is being drafted.',
  notHung: 'Not hung.',
}

export const HUNG_WORDS = {
  name: 'Name',
  keepName: 'Keep the name',
  rename: 'Rename',
  renameLabel: (name: string) => `Rename ${name}`,
  save: 'Save to a file',
  saveLabel: (name: string) => `Save to a file: ${name}`,
  takeOff: 'Take off the rail',
  takeOffLabel: (name: string) => `Take off the rail: ${name}`,
  /** The next act of a garment, read out. */
  actLabel: (act: string, name: string) => `${act}: ${name}`,
  /** Tags: a guess, a first draft, the number of the round. */
  guess: 'guess',
  draft: 'draft',
  round: (number: number) => ordinal(number),
  notTaped: (count: number) =>
    count === 1 ? 'One number not taped' : `${count} numbers not taped`,
  /** `names` as they stand within a sentence; `more`: there are others. */
  stillToTape: (names: readonly string[], more: boolean) =>
    `Still to tape: ${names.join(', ')}${more ? ' and others' : ''}. Nothing is cut before.`,
  tape: (count: number) => (count === 1 ? 'Tape one number' : `Tape ${count} numbers`),
  drafted: 'Drafted, not yet on paper',
  beingDrawn: (round: number) => `Round ${round} is being drawn`,
  asksForMore: 'A muslin can be sewn. Before cloth is cut the proof asks for more.',
  proved: 'Every proof holds. The muslin can go on paper.',
  putOnPaper: 'Put the muslin on paper',
  onTable: (round: number) => `Round ${round} is on the table`,
  wentOnPaper: (round: number, day: string) =>
    `Muslin ${round} went on paper on ${day}. Sew it, wear it, then say what you see.`,
  sayWhatYouSee: 'Say what you see',
}
function ordinal(n: number): string {
  const ending = n % 100 > 10 && n % 100 < 14 ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th')
  return `${n}${ending}`
}

export const CARRY_WORDS = {
  begin: (garment: string, count: number) =>
    `Begin the next garment with what “${garment}” taught: ${count === 1 ? 'this one comes' : `these ${count} come`} from your body.`,
  stays:
    'Ease, neckline, hem and sleeve stay with that garment. What the new one has no place for is left out; each can be taken back on the Fit page.',
}

export const CARE_WORDS = {
  title: 'Before you start',
  cautions: [
    'Close the blade of a cutter after every cut, and cut away from yourself.',
    'Pins never in the mouth; count them before you wear a muslin.',
    'Never tie a tape or cord tight round the neck. No children alone with either.',
    'Dry hands for the iron, and pull its plug.',
    'Loose sleeves catch: away from flame, hob and the moving needle.',
    'The loose draft is not for children’s nightwear.',
    'This is a dressmaking tool and no medical one. Where local rules or a licensed trade say otherwise, they come first.',
  ] as readonly string[],
}
