/** Declension from memory of school grammar; the nouns from common practice, no source. */
import { describe, expect, it } from 'vitest'
import { DARTS, EDGES, PIECES } from '../../src/draft/piece.words.de.ts'

describe('German names of pieces, edges and darts', () => {
  it('declines each gender with its article', () => {
    const { der, den, dem, des, ein, einen } = PIECES.backNeckFacing
    expect([der, den, dem, des, ein, einen]).toEqual([
      'der hintere Halsbeleg',
      'den hinteren Halsbeleg',
      'dem hinteren Halsbeleg',
      'des hinteren Halsbelegs',
      'ein hinterer Halsbeleg',
      'einen hinteren Halsbeleg',
    ])
    expect(EDGES.side).toMatchObject({
      der: 'die Seitennaht',
      den: 'die Seitennaht',
      dem: 'der Seitennaht',
      des: 'der Seitennaht',
      am: 'an der Seitennaht',
      zum: 'zur Seitennaht',
      many: 'Seitennähte',
    })
    expect(EDGES.armhole).toMatchObject({
      den: 'das Armloch',
      des: 'des Armlochs',
      im: 'im Armloch',
      vom: 'vom Armloch',
    })
  })

  it('declines several words before the noun alike and leaves what follows', () => {
    expect(PIECES.frontNeckFacingLeft.bare).toBe('linker vorderer Halsbeleg')
    expect(PIECES.frontNeckFacingLeft.dem).toBe('dem linken vorderen Halsbeleg')
    expect(PIECES.sideFrontRight.einem).toBe('einem rechten seitlichen Vorderteil')
    expect(PIECES.armholeStripRight.des).toBe('des rechten Schrägstreifens des Armlochs')
    expect(DARTS.waistDart2.zum).toBe('zum zweiten Taillenabnäher')
    expect(EDGES.frontSeam.am).toBe('an der vorderen Ärmelnaht')
  })
})
