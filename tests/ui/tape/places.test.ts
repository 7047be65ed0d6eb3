import { describe, expect, it } from 'vitest'
import {
  PLACE_IDS,
  placeAt,
  placeForArrow,
  placeForDigit,
  placeHref,
} from '../../../src/ui/tape/places.ts'

describe('addresses', () => {
  it('finds every place again from its own address', () => {
    for (const place of PLACE_IDS) {
      for (const garment of [undefined, 'arc blouse/2', 'a%b']) {
        const found = placeAt(placeHref(place, garment).slice(1))
        const own = place !== 'rail' && place !== 'measure'
        expect(found).toEqual({ place, garment: own ? garment : undefined })
      }
    }
  })

  it('knows no place where none lies', () => {
    for (const path of ['/g/x', '/g/x/measure', '/g//fit', '/rail', '/fit/more', '/nowhere'])
      expect(placeAt(path), path).toBeUndefined()
  })

  it('counts what is thrown to Cut', () => {
    expect(placeAt('/g/arc/cut/throw')).toEqual({ place: 'cut', garment: 'arc' })
    for (const path of ['/cut/throw', '/g/arc/fit/throw', '/g/arc/cut/throws'])
      expect(placeAt(path), path).toBeUndefined()
  })

  it('takes a lone percent sign as typed', () => {
    expect(placeAt('/g/50%/fit')).toEqual({ place: 'fit', garment: '50%' })
  })
})

describe('keys', () => {
  it('walks both ways round the tape, and to its ends', () => {
    expect(placeForArrow('ArrowDown', 'rail')).toBe('measure')
    expect(placeForArrow('ArrowLeft', 'rail')).toBe('cut')
    expect(placeForArrow('ArrowRight', 'cut')).toBe('rail')
    expect(placeForArrow('Home', 'fit')).toBe('rail')
    expect(placeForArrow('End', 'fit')).toBe('cut')
    expect(placeForArrow('a', 'fit')).toBeUndefined()
  })

  it('counts the places from 1', () => {
    expect(['1', '2', '3', '4', '5', '6'].map(placeForDigit)).toEqual([...PLACE_IDS])
    expect(['0', '7', '12', 'F1', ' '].map(placeForDigit)).toEqual(Array(5).fill(undefined))
  })
})
