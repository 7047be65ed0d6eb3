import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { figures } from '../scripts/estimate/compare.ts'
import { BadInput, bodiesIn } from '../scripts/estimate/folder.ts'

const folder = mkdtempSync(join(tmpdir(), 'estimate-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const put = (name: string, text = ''): void => writeFileSync(join(folder, name), text)

describe('a folder of photographs', () => {
  put('01-front.jpg')
  put('01-side.JPG')
  put('01-front-id1.jpg')
  put(
    '01-taps.json',
    JSON.stringify({
      front: [
        [1, 2],
        [3, 2],
        [3, 4],
        [1, 4],
      ],
    }),
  )
  put('01.json', JSON.stringify({ measures: { bustBreadth: 290, note: 'invented' } }))
  put('02-back.jpg')
  put('readme.txt')

  it('groups the views of a body and leaves the other card kind out', () => {
    const [one, two, ...more] = bodiesIn(folder, 'sheet')
    expect(more).toEqual([])
    expect(one?.files).toEqual({ front: '01-front.jpg', side: '01-side.JPG' })
    expect(one?.truth).toEqual({ bustBreadth: 290 })
    expect(two?.files).toEqual({ back: '02-back.jpg' })
    expect(two?.truth).toBeUndefined()
  })

  it('reads the taps of a card', () => {
    const [one] = bodiesIn(folder, 'id1')
    expect(one?.files).toEqual({ front: '01-front-id1.jpg' })
    expect(one?.taps.front?.[2]).toEqual({ x: 3, y: 4 })
    expect(one?.taps.side).toBeUndefined()
  })

  it('says in one sentence what is wrong with the input', () => {
    expect(() => bodiesIn(join(folder, 'nowhere'), 'sheet')).toThrow(BadInput)
    const empty = join(folder, 'empty')
    mkdirSync(empty)
    expect(() => bodiesIn(empty, 'sheet')).toThrow(/No photo named like NN-front\.jpg/)
    const bad = join(folder, 'bad')
    mkdirSync(bad)
    writeFileSync(join(bad, '01-front-id1.jpg'), '')
    writeFileSync(join(bad, '01-taps.json'), JSON.stringify({ front: [[1, 2]] }))
    expect(() => bodiesIn(bad, 'id1')).toThrow(/four taps/)
  })
})

describe('estimates against tape measurements', () => {
  it('gives mean and mean absolute error and the share inside the ±, under the truth file’s names', () => {
    // By hand: errors +10 and -4 against 400 and 400; ± 8 holds only the second.
    const body = (value: number) => ({
      estimates: { napeToWaist: { value, pm90: 8 } },
      truth: { napeToWaistTaut: 400, napeToWaist: 1 },
    })
    const all = figures([body(410), body(396)])
    expect(all.napeToWaist).toEqual({ n: 2, mean: 3, meanAbs: 7, maxAbs: 10, inside: 0.5 })
    expect(all.bustBreadth).toBeUndefined()
  })
})
