/** Each garment through the places of its work, from one tape book: no place knows the blouse alone. */
import { describe, expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import type { Component } from 'svelte'
import { GARMENT_IDS, GARMENTS } from '../../src/draft/garments.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import CutPlace from '../../src/ui/cut/CutPlace.svelte'
import DraftPlace from '../../src/ui/draft/DraftPlace.svelte'
import FitPlace from '../../src/ui/fitting/FitPlace.svelte'
import { Preferences } from '../../src/ui/preferences.svelte.ts'
import type { GarmentRoute } from '../../src/ui/routes.ts'
import ComparePlace from '../../src/ui/rounds/ComparePlace.svelte'
import { bookOf, MIDDLE } from '../bodies.ts'
import OnThePage from './draft/OnThePage.svelte'
import { seeded } from './draft/seeded.ts'
import { drawn as drawnNow } from '../../src/ui/session/drawn.ts'

describe.each(GARMENT_IDS)('%s', (id) => {
  it('is drafted, sewn, spoken of, compared and cut', async () => {
    const { session } = await seeded(bookOf(MIDDLE))
    const garment = await session.hang(id)
    if (garment === undefined) throw new Error(session.problem)
    const preferences = new Preferences()
    const open = (page: Component<GarmentRoute>) =>
      render(OnThePage, { page, garment, session, preferences })

    const drafted = await open(DraftPlace)
    await expect
      .element(drafted.getByRole('heading', { level: 1 }))
      .toHaveTextContent(GARMENTS[id].name)
    await expect.element(drafted.getByRole('heading', { name: 'Proof' })).toBeInTheDocument()
    await drafted.unmount()

    expect(await session.putOnPaper(garment)).toBe(true)
    const fitted = await open(FitPlace)
    const where = fitted.getByRole('combobox', { name: 'Where' })
    await expect.element(where).toBeInTheDocument()
    await fitted.unmount()

    expect(await session.startNext(garment)).toBe(true)
    const compared = await open(ComparePlace)
    await expect.element(compared.getByRole('heading', { level: 1 })).toBeInTheDocument()
    await compared.unmount()

    const drawn = drawnNow(session, garment)
    if (drawn?.standing !== 'confirmed') throw new Error('all numbers are taped')
    expect(pieceOf(drawn.corrected.draft, 'front').edges.length).toBeGreaterThan(4)
    const cut = await open(CutPlace)
    await expect.element(cut.getByRole('heading', { level: 1 })).toBeInTheDocument()
    await cut.unmount()
  })
})
