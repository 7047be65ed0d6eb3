/** npm run fit -- --schema: the vocabulary of a case and the shape of RESULT. */
import { OP_NAMES, PLACES } from '../../src/fitting/complaints/complaint.ts'
import { HOWS, PIN_SIDES, STANDARD_RULES } from '../../src/fitting/half-amount.ts'
import { REACHES } from '../../src/fitting/reaches.ts'
import { complaintWords } from '../../src/fitting/rules/case.ts'
import { GARMENTS } from '../../src/draft/garments.ts'

export function printSchema(): void {
  const schema = {
    case: {
      id: 'any name',
      garment: Object.keys(GARMENTS),
      draft: 'lengths in mm by the names below; or input, as npm run draft reads it',
      complaints: [
        {
          id: 'one of the complaints below',
          answers:
            'key true or false; a key is the number of a cause ("1", "cause 1", "N1.1"), of a test ("test 1"), or its sentence',
          pin: { where: PLACES, side: PIN_SIDES, how: HOWS, value_mm: 'number' },
        },
      ],
    },
    how: {
      fold: 'a flat tuck, read from its fold to the pin: holds twice that',
      pinch: 'the whole width pinned out',
      slit: 'the opening between two cut edges',
      level: 'from a drawn line to where it should lie',
      newLine: 'from the seam to the new line of pins, on each piece',
    },
    side: {
      one: 'read on one side, meant for both',
      both: 'so much on each side',
      left: 'left only',
      right: 'right only',
    },
    result: {
      decision: ['change', 'ask', 'nothing'],
      causes: 'complaint and number of the cause, and of the one it leads to: "N4.1", "SH2.1"',
      edits: {
        target: 'piece.edge or piece.dart',
        op: OP_NAMES,
        rawHalf_mm: 'on the half piece as read',
        applied_mm: 'after the share of a take-in, then the most of one round; always positive',
        cap_mm: 'the most of one round; null where the edit follows from another',
        theta_deg: 'turn; null where nothing turns or a length for it is missing',
        way: 'in, out, up, down, wider, narrower, forward, back',
        side: 'left or right, where the two sides differ',
        follows: 'the target it follows from: the dart that takes a turn up, and the like',
      },
      heldBack: 'what waits for the next muslin, mm on the half piece, and why',
      reasons: 'sentences',
      asks: 'tests and readings still wanted, and what to tape again',
      choices: 'two opposite works with both numbers',
    },
    rules: STANDARD_RULES,
    lengths: Object.fromEntries(
      Object.entries(REACHES).map(([name, { means, also }]) => [name, { means, also }]),
    ),
    complaints: complaintWords(),
  }
  process.stdout.write(`${JSON.stringify(schema, null, 2)}\n`)
}
