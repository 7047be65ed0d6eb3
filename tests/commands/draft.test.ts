/**
 * The draft command: files, exit codes, sentences, and its schemas held to its parser. A draft and a
 * refusal are run as she runs them; the others call what the command does, for a process of their
 * own takes two seconds to begin.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import fc from 'fast-check'
import * as v from 'valibot'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { draftCommand } from '../../scripts/draft/command.ts'
import { readDraftInput } from '../../src/storage/read-draft-input.ts'
import { CORRECTION_INPUTS, draftInputSchema } from '../../src/storage/schema/draft-input.ts'
import { DraftNumbersSchema } from '../../src/storage/schema/draft-numbers.ts'
import { fits } from './json-schema.ts'

const SCRIPT = fileURLToPath(new URL('../../scripts/draft.ts', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'draft-'))
afterAll(() => rmSync(folder, { recursive: true }))

interface Said {
  readonly status: number | null
  readonly stdout: string
  readonly stderr: string
}
const spawned = (...args: string[]): Said =>
  spawnSync(process.execPath, ['--import', 'tsx', SCRIPT, ...args], { encoding: 'utf8' })
async function run(...args: string[]): Promise<Said> {
  let [stdout, stderr] = ['', '']
  const status = await draftCommand(args, {
    out: (text) => (stdout += text),
    err: (text) => (stderr += text),
  })
  return { status, stdout, stderr }
}

interface Example {
  measurements: Record<string, unknown>
  corrections: Record<string, unknown>[]
  [field: string]: unknown
}
let example: Example
let schemas: { input: unknown; numbers: unknown; corrections: Record<string, unknown> }
beforeAll(async () => {
  example = JSON.parse((await run('--example')).stdout) as Example
  schemas = JSON.parse((await run('--schema')).stdout) as typeof schemas
})

const readBack = (change: (file: Example) => void) => {
  const file = structuredClone(example)
  change(file)
  return readDraftInput(JSON.stringify(file), '2026-11-25')
}
const inputFile = (name: string, text: string): string => {
  const path = join(folder, name)
  writeFileSync(path, text)
  return path
}

describe('the command', () => {
  test.each(['block', 'sleeveless', 'sleeve'])('the example of the %s runs', async (garment) => {
    const out = join(folder, garment)
    const given = (await run('--example', garment)).stdout
    const { status, stdout, stderr } = await run(inputFile(`${garment}.json`, given), out)
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
    const last = stdout.trimEnd().split('\n').at(-1) ?? ''
    expect(JSON.parse(last.replace(/^RESULT /, ''))).toMatchObject({ garment, refused: [] })
  })
  test('an example of no garment is refused with the list', async () => {
    const { status, stderr } = await run('--example', 'cape')
    expect(status).toBe(2)
    expect(stderr).toContain('blouse, block, sleeveless, sleeve')
  })
  test('the example runs and writes pieces, sheets, steps and numbers', () => {
    const out = join(folder, 'out')
    const { status, stdout, stderr } = spawned(inputFile('ex.json', JSON.stringify(example)), out)
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
    expect(readdirSync(out).sort()).toEqual([
      'back.svg',
      'front.svg',
      'neckStrip.svg',
      'numbers.json',
      'pieces.dxf',
      'sheets.pdf',
      'slitFacing.svg',
      'steps.txt',
    ])
    const last = stdout.trimEnd().split('\n').at(-1) ?? ''
    const result = JSON.parse(last.replace(/^RESULT /, '')) as Record<string, unknown>
    expect(result).toMatchObject({ pieces: 4, refused: [] })
    expect(result['files']).toHaveLength(8)

    const numbers: unknown = JSON.parse(readFileSync(join(out, 'numbers.json'), 'utf8'))
    expect(fits(schemas.numbers, numbers)).toBe(true)
    const { points, lengths, findings } = v.parse(DraftNumbersSchema, numbers)
    expect(result['findings']).toBe(findings.length)
    // By hand: nape to waist 15 3/4 in = 400.05 mm (25.4 mm an inch), and 12 mm added in length.
    expect(points['back.C']).toEqual([0, 412.05])
    // By hand: a quarter of the hip 1000 and 19 mm of ease, at the hip level 200 under the waist.
    expect(points['back.X']).toEqual([269, 612.05])
    // Sewn together, so equal, whatever the numbers (the wedge keeps both).
    expect(lengths['front.overarm']).toBeCloseTo(lengths['back.overarm'] ?? 0, 1)
    expect(lengths['front.side']).toBeCloseTo(lengths['back.side'] ?? 0, 1)
    for (const piece of ['back', 'front'])
      for (const edge of ['neck', 'overarm', 'sleeveEdge', 'side', 'hem']) {
        expect(lengths[`${piece}.${edge}`]).toBeGreaterThan(0)
        const svg = readFileSync(join(out, `${piece}.svg`), 'utf8')
        expect(svg).toContain(`id="${piece}.${edge}"`)
      }
    expect(lengths['front.waistDart']).toBeGreaterThan(0)
    expect(readFileSync(join(out, 'sheets.pdf')).subarray(0, 5).toString()).toBe('%PDF-')
    const steps = readFileSync(join(out, 'steps.txt'), 'utf8')
    expect(steps).toContain('Nape to waist: 40.0 cm')
    expect(steps).toContain('nobody was measured')
  })

  test('a refused correction is listed with its place and numbers, and the rest runs', async () => {
    const out = join(folder, 'refused')
    const corrections = [
      { kind: 'turn-choice', choice: 'lengthAdded', by: 500 },
      { kind: 'close-wedge', piece: 'back', edge: 'sleeveEdge', along: 0.5, width: 6 },
      { kind: 'withdraw', correction: 'c9' },
    ]
    const because = {
      complaint: 'B8',
      cause: 'bust shaping',
      pinned: { how: 'wholeFold', read: 6, share: 1 },
      watch: 0,
      round: 1,
    }
    const file = {
      ...example,
      units: 'in',
      corrections: corrections.map((c) => (c.kind === 'close-wedge' ? { ...c, because } : c)),
    }
    const { status, stdout } = await run(inputFile('refused.json', JSON.stringify(file)), out)
    expect(status).toBe(0)
    const { findings } = v.parse(
      DraftNumbersSchema,
      JSON.parse(readFileSync(join(out, 'numbers.json'), 'utf8')),
    )
    expect(findings.filter((f) => f.id.startsWith('refused:'))).toEqual([
      // The choice goes to 60 mm; 0 + 500 was asked.
      {
        id: 'refused:choiceOutOfRange',
        severity: 'stop',
        place: 'lengthAdded',
        value: 500,
        limit: 60,
      },
      { id: 'refused:noDart', severity: 'stop', place: 'back.sleeveEdge', value: 6, limit: null },
      {
        id: 'refused:nothingToWithdraw',
        severity: 'stop',
        place: 'c9',
        value: null,
        limit: null,
      },
    ])
    expect(stdout).toContain('refused  c1: ')
    expect(stdout.trimEnd().split('\n').at(-1)).toContain('"refused":["c1","c2","c3"]')
    expect(readFileSync(join(out, 'steps.txt'), 'utf8')).toMatch(/Nape to waist: 15 3\/4 in/)
  })

  test.each<[string, (...args: string[]) => Said | Promise<Said>, () => string[], RegExp]>([
    [
      'no such file',
      run,
      () => [join(folder, 'none.json'), join(folder, 'x')],
      /none\.json cannot be read/,
    ],
    [
      'no folder named',
      run,
      () => [join(folder, 'none.json')],
      /Name one input file and one folder/,
    ],
    [
      'a folder that is a file',
      run,
      () => {
        const path = inputFile('ex2.json', JSON.stringify(example))
        return [path, path]
      },
      /cannot be written/,
    ],
    [
      'a misspelt field',
      spawned,
      () => [inputFile('bad.json', JSON.stringify({ ...example, papr: 'a4' })), join(folder, 'x')],
      /There is no field "papr"/,
    ],
  ])('%s: exit 2 and one sentence', async (_name, how, args, sentence) => {
    const { status, stdout, stderr } = await how(...args())
    expect(status).toBe(2)
    expect(stdout).toBe('')
    expect(stderr.trimEnd().split('\n')).toHaveLength(1)
    expect(stderr).toMatch(sentence)
    expect(existsSync(join(folder, 'x'))).toBe(false)
  })
})

describe('what the input may say', () => {
  test.each([
    ['an unknown measurement', (f: Example) => (f.measurements['bustGrith'] = 940), /"bustGrith"/],
    [
      'centimetres as millimetres',
      (f: Example) => (f.measurements['bustGirth'] = 94),
      /94 mm; it lies between/,
    ],
    [
      'a text that is no length',
      (f: Example) => (f.measurements['bustGirth'] = 'wide'),
      /bustGirth/,
    ],
    ['a text in the wrong unit', (f: Example) => (f.measurements['bustGirth'] = '94 in'), /94/],
    ['no garment', (f: Example) => delete f['garment'], /Use blouse/],
    [
      'another garment',
      (f: Example) => (f['garment'] = 'trousers'),
      /"trousers" cannot be drafted/,
    ],
    ['an unknown choice', (f: Example) => (f['choices'] = { easeBst: 3 }), /no choice "easeBst"/],
    [
      'a choice out of range',
      (f: Example) => (f['choices'] = { easeBust: 900 }),
      /goes from 5 to 60 mm/,
    ],
    ['an unknown unit', (f: Example) => (f['units'] = 'mm'), /Use cm or in/],
    ['an unknown paper', (f: Example) => (f['paper'] = 'a5'), /Use a4 or letter/],
    [
      'a wide allowance',
      (f: Example) => (f['allowances'] = { side: 400 }),
      /side seam would be 400/,
    ],
    ['an allowance on the fold', (f: Example) => (f['allowances'] = { centre: 10 }), /centre/],
    [
      'an unknown kind',
      (f: Example) => (f.corrections = [{ kind: 'stretch' }]),
      /turn-choice, close-wedge, operate or withdraw/,
    ],
    [
      'a wedge of nothing',
      (f: Example) => f.corrections.push({ ...f.corrections[1], width: 0 }),
      /width/,
    ],
    [
      'an id used twice',
      (f: Example) =>
        f.corrections.push({ ...f.corrections[0], id: 'a' }, { ...f.corrections[0], id: 'a' }),
      /same id/,
    ],
    [
      'a wedge no complaint leads to',
      (f: Example) => f.corrections.push({ ...f.corrections[1], edge: 'hem' }),
      /because/,
    ],
  ])('%s is refused with a sentence', (_name, change, sentence) => {
    const read = readBack(change)
    expect(read.ok ? 'accepted' : read.reason).toMatch(sentence)
  })

  test('every missing measurement is named in one sentence', () => {
    const read = readBack((f) => {
      delete f.measurements['waistToHip']
      delete f.measurements['apexSpacing']
    })
    expect(read.ok ? '' : read.reason).toMatch(/waistToHip \(.+\), apexSpacing \(.+\)/)
  })

  test('text that is no JSON says so', () => {
    const read = readDraftInput('{"garment": ', '2026-11-25')
    expect(read.ok ? '' : read.reason).toMatch(/no JSON.*--example/)
  })

  test('units are read as written; a bare text takes the unit of the file', () => {
    const inInches = readBack((f) => {
      f['units'] = 'in'
      f.measurements['napeToWaist'] = '15 3/4'
      f.measurements['waistToHip'] = '20 cm'
    })
    if (!inInches.ok) throw new Error(inInches.reason)
    // By hand: 15.75 × 25.4 = 400.05.
    expect(inInches.value.body.values.napeToWaist).toBeCloseTo(400.05, 6)
    expect(inInches.value.body.values.waistToHip).toBeCloseTo(200, 6)
    expect(inInches.value.body.readings.waistToHip).toHaveLength(2)
  })

  test('ids are given in order around those that are taken', () => {
    const read = readBack((f) => {
      f.corrections = [
        { kind: 'turn-choice', choice: 'lengthAdded', by: 5 },
        { kind: 'turn-choice', choice: 'lengthAdded', by: 5, id: 'c2' },
        { kind: 'turn-choice', choice: 'lengthAdded', by: 5 },
      ]
    })
    expect(read.ok && read.value.corrections.map(({ id }) => id)).toEqual(['c1', 'c2', 'c3'])
  })
})

/** A value of any kind, with many that lie near the limits of lengths and shares. */
const anything = fc.oneof(
  fc.constantFrom<unknown>(
    ...[0, 1, -1, 0.5, 2, 8, 16, 60, 60.5, 100, 100.5, 900, 940, 1650, 1651, 10_000, 10_001],
    ...['', 'cm', 'in', 'a4', 'letter', 'blouse', 'c1', 'front', 'back', 'sleeveEdge', 'hem'],
    ...['lengthAdded', 'B8', 'wholeFold', '94 cm', 'x'.repeat(41), 'x'.repeat(201)],
    ...[null, true, [], {}, [1, 2], { x: 1 }],
  ),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.string(),
)

type Node = Record<string, unknown> | unknown[]
const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null
/** Every place inside, as a list of keys. */
const places = (value: unknown): string[][] =>
  isNode(value)
    ? Object.entries(value).flatMap(([key, v]) => [[key], ...places(v).map((p) => [key, ...p])])
    : []

/** The sample with up to two places replaced, removed, or given a strange neighbour. */
function spoiltCopies(sample: unknown): fc.Arbitrary<unknown> {
  const change = fc.record({
    place: fc.constantFrom(...places(sample)),
    how: fc.constantFrom('replace', 'replace', 'remove', 'add'),
    by: anything,
  })
  return fc.array(change, { maxLength: 2 }).map((changes) => {
    const copy = structuredClone(sample)
    for (const { place, how, by } of changes) {
      let at: unknown = copy
      for (const key of place.slice(0, -1)) at = isNode(at) ? Reflect.get(at, key) : undefined
      const key = place.at(-1)
      if (!isNode(at) || key === undefined) continue
      if (how === 'add' && !Array.isArray(at)) Reflect.set(at, 'extra', by)
      else if (how === 'remove' && !Array.isArray(at)) Reflect.deleteProperty(at, key)
      else Reflect.set(at, key, by)
    }
    // What cannot be written as JSON never arrives.
    return JSON.parse(JSON.stringify(copy)) as unknown
  })
}

function agree(schema: unknown, parser: v.GenericSchema, samples: readonly unknown[]): void {
  let [good, bad] = [0, 0]
  for (const sample of samples)
    fc.assert(
      fc.property(spoiltCopies(sample), (value) => {
        const accepted = v.safeParse(parser, value).success
        if (accepted) good += 1
        else bad += 1
        expect([fits(schema, value), value]).toEqual([accepted, value])
      }),
      { numRuns: 400, seed: 20261125 },
    )
  // A test that met only one of the two would say nothing.
  expect(good).toBeGreaterThan(20)
  expect(bad).toBeGreaterThan(20)
}

describe('the printed JSON Schemas', () => {
  const because = {
    complaint: 'B8',
    cause: 'bust shaping',
    pinned: { how: 'wholeFold', read: 7, share: 0.87 },
    watch: 0.09,
    round: 1,
  }
  const full = {
    'turn-choice': { v: 1, id: 'c1', kind: 'turn-choice', choice: 'lengthAdded', by: 12, because },
    'close-wedge': {
      v: 1,
      id: 'c1',
      kind: 'close-wedge',
      piece: 'front',
      edge: 'sleeveEdge',
      along: 0.5,
      width: 6,
      because,
    },
    withdraw: { v: 1, id: 'c2', kind: 'withdraw', correction: 'c1', round: 1 },
  } as const

  test('of the input agrees with the parser on good and bad files', () => {
    agree(schemas.input, draftInputSchema('blouse'), [
      example,
      { ...example, corrections: Object.values(full) },
    ])
  })

  test('of the input refuses nothing that the command accepts', () => {
    fc.assert(
      fc.property(spoiltCopies(example), (value) => {
        if (readDraftInput(JSON.stringify(value), '2026-11-25').ok)
          expect(fits(schemas.input, value)).toBe(true)
      }),
      { numRuns: 200, seed: 7 },
    )
  })

  test.each(['turn-choice', 'close-wedge', 'withdraw'] as const)('of %s agrees too', (kind) => {
    agree(schemas.corrections[kind], CORRECTION_INPUTS[kind], [full[kind]])
  })

  test('of numbers.json agrees too', () => {
    agree(schemas.numbers, DraftNumbersSchema, [
      {
        points: { 'back.A': [0, 0], 'front.T': [382.16, 0] },
        lengths: { 'back.neck': 106.91 },
        findings: [
          { id: 'armOpening', severity: 'stop', place: 'front.sleeveEdge', value: 1, limit: 2 },
          { id: 'refused:noDart', severity: 'stop', place: 'c1', value: 6, limit: null },
        ],
      },
    ])
  })
})
