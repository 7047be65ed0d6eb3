/** What the draft command does, apart from the process it runs in. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { toJsonSchema } from '@valibot/to-json-schema'
import { CannotDraw, undrawableSentence } from '../../src/draft/cannot-draw.ts'
import { CHOICES } from '../../src/draft/choices.ts'
import { GARMENTS, isGarmentId } from '../../src/draft/garments.ts'
import { findingSentence } from '../../src/draft/finding.ts'
import { toCut } from '../../src/draft/to-cut.ts'
import { record } from '../../src/draft/record.ts'
import { correctedDraft, type Corrected } from '../../src/fitting/apply.ts'
import type { Correction } from '../../src/fitting/correction.ts'
import { refusalSentence, type Refusal } from '../../src/fitting/refusal.ts'
import { draftDxf } from '../../src/output/dxf.ts'
import { stepsText } from '../../src/output/instruction-page.ts'
import { pieceSvg } from '../../src/output/svg.ts'
import { GIVEN_BY_FILE } from '../../src/storage/corrections-by-hand.ts'
import { readDraftInput, type DraftOrder } from '../../src/storage/read-draft-input.ts'
import { CORRECTION_INPUTS, draftInputSchema } from '../../src/storage/schema/draft-input.ts'
import {
  DraftNumbersSchema,
  type DraftNumbers,
  type FindingNumbers,
} from '../../src/storage/schema/draft-numbers.ts'

const HELP = `npm run draft -- INPUT.json OUT_DIR   draft from a file of numbers
npm run draft -- --example [GARMENT]  print a complete input (JSON only)
npm run draft -- --schema             print the JSON Schemas of input, numbers and corrections

The measurements of the input are tape readings: two equal readings are recorded for each.
Numbers are millimetres. A measurement may be a text with its unit: "39.1 cm", "15 3/8 in".
units (cm or in) says how the steps are written and how a text without a unit is read.
Written into OUT_DIR: an SVG a piece, pieces.dxf, sheets.pdf, steps.txt, numbers.json.`

/** Invented: nobody was measured. Every field of an input stands here once. */
const EXAMPLE = {
  garment: 'blouse',
  units: 'cm',
  inchStep: 8,
  measurements: {
    bustGirth: 940,
    highBustGirth: 900,
    waistGirth: 780,
    highHipGirth: 910,
    waistToHighHip: 100,
    hipGirth: 1000,
    waistToHip: 200,
    neckBaseGirth: 372,
    headGirth: 560,
    upperArmGirth: '29 cm',
    slipThroughGirth: 1010,
    napeToWaist: '15 3/4 in',
    sideNeckOverBladeToWaist: 424,
    sideNeckOverApexToWaist: 426,
    waistToBustLevel: 165,
    napeToArmpitLevel: 186,
    apexSpacing: 184,
  },
  choices: { easeBust: 22, neckHalfWidth: 100 },
  corrections: [
    { kind: 'turn-choice', choice: 'lengthAdded', by: 12 },
    { kind: 'close-wedge', piece: 'front', edge: 'sleeveEdge', along: 0.5, width: 6 },
    { kind: 'turn-choice', choice: 'overarmDrop', by: 5 },
    { kind: 'withdraw', correction: 'c3' },
  ],
  allowances: { neck: 0, overarm: 25, sleeveEdge: 10, side: 25, hem: 40 },
  paper: 'a4',
  invented: true,
}

/** The same invented numbers for each garment; its corrections only where they have meaning. */
function exampleOf(name: string): object {
  if (!isGarmentId(name))
    throw new Unusable(`${name} is no garment. Use ${Object.keys(GARMENTS).join(', ')}.`)
  if (name === 'blouse') return EXAMPLE
  const { needs, uses } = GARMENTS[name]
  const wanted = new Set<string>([...needs, ...uses])
  const measurements = Object.fromEntries(
    Object.entries({ ...EXAMPLE.measurements, ...EXAMPLE_BODICE }).filter(([id]) => wanted.has(id)),
  )
  return {
    ...EXAMPLE,
    garment: name,
    measurements,
    choices: { easeBust: GARMENTS[name].standard.easeBust ?? CHOICES.easeBust.default },
    corrections: [{ kind: 'turn-choice', choice: 'lengthAdded', by: 12 }],
    allowances: { neck: 0, shoulder: 25, armhole: 10, side: 25, hem: 40 },
  }
}
/** Invented like the rest. */
const EXAMPLE_BODICE = {
  acrossBack: 360,
  acrossChest: 330,
  frontNeckToWaist: 346,
  shoulderLengthLeft: 125,
  shoulderLengthRight: 125,
  shoulderSlopeLeft: 42,
  shoulderSlopeRight: 42,
}

class Unusable extends Error {}

/** Where the command speaks: what it found, and the one sentence of what it cannot use. */
export interface Voice {
  readonly out: (text: string) => void
  readonly err: (text: string) => void
}

/** Runs the command with its words and gives its exit code. */
export async function draftCommand(args: readonly string[], { out, err }: Voice): Promise<0 | 2> {
  try {
    await obey(args, (line) => out(`${line}\n`))
    return 0
  } catch (error) {
    if (!(error instanceof Unusable)) throw error
    err(`${error.message}\n`)
    return 2
  }
}

type Say = (line: string) => void

async function obey(args: readonly string[], say: Say): Promise<void> {
  const [first, folder, ...more] = args
  if (first === '--help') return say(HELP)
  if (first === '--example') return say(JSON.stringify(exampleOf(folder ?? 'blouse'), null, 2))
  if (first === '--schema') return say(JSON.stringify(schemas(), null, 2))
  if (first === undefined || folder === undefined || more.length > 0 || first.startsWith('-'))
    throw new Unusable('Name one input file and one folder: npm run draft -- INPUT.json OUT_DIR')
  const today = new Date().toISOString().slice(0, 10)
  const order = readDraftInput(fileText(first), today)
  if (!order.ok) throw new Unusable(`${first}: ${order.reason}`)
  await draftInto(folder, order.value, say)
}

async function draftInto(folder: string, order: DraftOrder, say: Say): Promise<void> {
  const { units, allowances, corrections, invented } = order
  const corrected = drawn(order)
  const made = { ...corrected, draft: toCut(corrected.draft) }
  const refused = [...made.refused, ...withdrawnInVain(corrections)]
  const numbers: DraftNumbers = {
    ...plainRecord(made),
    findings: [
      ...made.draft.findings.map(({ id, severity, place, value, limit }) => ({
        id,
        severity,
        place,
        value,
        limit,
      })),
      ...refused.map((refusal) => refusalNumbers(refusal, corrections)),
    ],
  }
  const svgs = made.draft.pieces.map((piece) => ({
    name: `${piece.id}.svg`,
    content: pieceSvg(piece, { allowances, standing: 'confirmed' }),
  }))
  const font = readFileSync(
    createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
  )
  // Loaded here, so that a bad input is answered without waiting for the PDF library.
  const { draftPdf } = await import('../../src/output/pdf.ts')
  const pdf = await draftPdf(made.draft, {
    paper: order.paper,
    allowances,
    units,
    font,
    invented,
  })
  const files = [
    ...svgs,
    ...(pdf.ok ? [{ name: 'sheets.pdf', content: pdf.bytes }] : []),
    { name: 'pieces.dxf', content: draftDxf(made.draft, { allowances }) },
    { name: 'steps.txt', content: stepsText(made.draft, units, { invented, allowances }) },
    { name: 'numbers.json', content: `${JSON.stringify(numbers, null, 2)}\n` },
  ]
  writeAll(folder, files)
  const count = Object.keys(order.body.values).length
  say(`${count} measurements ${GIVEN_BY_FILE}, each recorded as two equal tape readings.`)
  for (const finding of made.draft.findings)
    say(`${finding.severity}  ${finding.place}: ${findingSentence(finding, units)}`)
  for (const { correction, why } of refused)
    say(`refused  ${correction}: ${refusalSentence(why, units)}`)
  if (order.unused.length > 0) say(`Not used by this garment: ${order.unused.join(', ')}.`)
  if (!pdf.ok) say(`No PDF: ${pdf.reason}`)
  const result = {
    garment: order.garment,
    pieces: made.draft.pieces.length,
    lengths: Object.keys(numbers.lengths).length,
    points: Object.keys(numbers.points).length,
    findings: numbers.findings.length,
    refused: refused.map(({ correction }) => correction),
    sheets: pdf.ok ? pdf.sheets : 0,
    files: files.map(({ name }) => name),
  }
  say(`RESULT ${JSON.stringify(result)}`)
}

/** Numbers, each possible alone, that cannot be drawn together are answered by their names. */
function drawn({ garment, body, choices, corrections, units }: DraftOrder): Corrected {
  try {
    return correctedDraft(garment, body, choices, corrections)
  } catch (error) {
    if (!(error instanceof CannotDraw)) throw error
    throw new Unusable(`Nothing was drawn. ${undrawableSentence(error.why, units)}`)
  }
}

function plainRecord(made: Corrected): Pick<DraftNumbers, 'points' | 'lengths'> {
  const { points, lengths } = record(made.draft)
  return {
    points: Object.fromEntries(Object.entries(points).map(([name, [x, y]]) => [name, [x, y]])),
    lengths: { ...lengths },
  }
}

/** Replay ignores a withdrawal of what is not in force; whoever wrote it should hear of it. */
function withdrawnInVain(corrections: readonly Correction[]): readonly Refusal[] {
  const inForce = new Set<string>()
  return corrections.flatMap((c) => {
    if (c.kind !== 'withdraw') {
      inForce.add(c.id)
      return []
    }
    return inForce.delete(c.correction)
      ? []
      : [{ correction: c.id, why: { id: 'nothingToWithdraw' } as const }]
  })
}

function refusalNumbers(
  { correction: id, why }: Refusal,
  corrections: readonly Correction[],
): FindingNumbers {
  const named = corrections.find((c) => c.id === id)
  if (!named) throw new Error(`draft: refused ${id}, which is not in the list`)
  const base = { id: `refused:${why.id}`, severity: 'stop', place: placeOf(named) } as const
  switch (why.id) {
    case 'choiceOutOfRange': {
      const { min, max } = CHOICES[why.choice]
      return { ...base, value: why.to, limit: why.to > max ? max : min }
    }
    case 'wedgeTooWide':
      return { ...base, value: why.width, limit: why.reach }
    case 'edgeSlants':
      return { ...base, value: why.width, limit: why.most }
    case 'dartTooWide':
      return { ...base, value: why.to, limit: why.most }
    case 'noDart':
    case 'noEdge':
    case 'wedgeMissesEdge':
    case 'cannotDraw':
    case 'noPlace':
    case 'noTip':
    case 'noSideDart':
      return { ...base, value: named.kind === 'close-wedge' ? named.width : null, limit: null }
    case 'dartTooSmall':
      return { ...base, value: why.to, limit: null }
    case 'sideTooShort':
      return { ...base, value: why.by, limit: null }
    case 'nothingToWithdraw':
      return { ...base, value: null, limit: null }
  }
}

function placeOf(correction: Correction): string {
  switch (correction.kind) {
    case 'turn-choice':
      return correction.choice
    case 'close-wedge':
      return `${correction.piece}.${correction.edge}`
    case 'operate': {
      const { operation: op } = correction
      return 'piece' in op ? `${op.piece}.${op.op}` : op.op
    }
    case 'withdraw':
      return correction.correction
  }
}

function schemas(): object {
  const schema = (of: Parameters<typeof toJsonSchema>[0]) =>
    toJsonSchema(of, { typeMode: 'input', target: 'draft-2020-12' })
  const inputs = Object.keys(GARMENTS)
    .filter(isGarmentId)
    .map((id) => schema(draftInputSchema(id)))
  const [only] = inputs
  return {
    input: inputs.length === 1 ? only : { oneOf: inputs },
    numbers: schema(DraftNumbersSchema),
    corrections: Object.fromEntries(
      Object.entries(CORRECTION_INPUTS).map(([kind, of]) => [kind, schema(of)]),
    ),
  }
}

function fileText(path: string): string {
  try {
    // Some editors begin a file with a byte order mark, which is no JSON.
    return readFileSync(path, 'utf8').replace(/^\uFEFF/, '')
  } catch (error) {
    throw new Unusable(`${path} cannot be read (${codeOf(error)}). Name a JSON file that is there.`)
  }
}

function writeAll(
  folder: string,
  files: readonly { readonly name: string; readonly content: string | Uint8Array }[],
): void {
  try {
    mkdirSync(folder, { recursive: true })
    for (const { name, content } of files) writeFileSync(join(folder, name), content)
  } catch (error) {
    throw new Unusable(
      `${folder} cannot be written (${codeOf(error)}). Name a folder that is yours to write in.`,
    )
  }
}

const codeOf = (error: unknown): string =>
  error instanceof Error && 'code' in error ? String(error.code) : String(error)
