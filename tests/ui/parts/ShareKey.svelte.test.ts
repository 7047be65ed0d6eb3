/**
 * Real files to the share sheet. `navigator.share` and `navigator.canShare` are stood in for, and
 * nothing else: a Chromium without a window has no share sheet. What they throw is from W3C Web
 * Share: AbortError where she closes the sheet, NotAllowedError where the browser refuses.
 */
import { afterEach, describe, expect, it, vi } from 'vitest'
import { render } from 'vitest-browser-svelte'
import ShareUnderTest from './ShareUnderTest.svelte'

type Share = (data: ShareData) => Promise<void>

function browserThatShares(share: Share, canShare: (data: ShareData) => boolean = () => true) {
  const shared = vi.fn(share)
  Object.assign(navigator, { share: shared, canShare })
  return shared
}
afterEach(() => {
  Reflect.deleteProperty(navigator, 'share')
  Reflect.deleteProperty(navigator, 'canShare')
})

const pdf = () => new File(['%PDF-1.7'], 'blouse-sheets.pdf', { type: 'application/pdf' })
const work = () => new File(['{"schema":9}'], 'tapetrue.json', { type: 'application/json' })
const refusal = (name: string) => () => Promise.reject(new DOMException('', name))
const key = { name: 'Share it' }
const filesOf = async (data: ShareData | undefined) =>
  Promise.all(
    (data?.files ?? []).map(async (f) => ({ name: f.name, type: f.type, text: await f.text() })),
  )

describe('a file beside its saving', () => {
  it('goes to the share sheet by her press, and not before', async () => {
    const shared = browserThatShares(() => Promise.resolve())
    const screen = await render(ShareUnderTest, { kind: 'application/pdf', make: pdf })
    expect(shared).not.toHaveBeenCalled()
    await screen.getByRole('button', key).click()
    await vi.waitFor(() => expect(shared).toHaveBeenCalledOnce())
    expect(await filesOf(shared.mock.calls[0]?.[0])).toEqual([
      { name: 'blouse-sheets.pdf', type: 'application/pdf', text: '%PDF-1.7' },
    ])
    await expect.element(screen.getByRole('status')).toHaveTextContent(/^$/)
  })

  it('work goes as plain text, which browsers hand on, byte for byte', async () => {
    const shared = browserThatShares(() => Promise.resolve())
    const screen = await render(ShareUnderTest, { kind: 'application/json', make: work })
    await screen.getByRole('button', key).click()
    await vi.waitFor(() => expect(shared).toHaveBeenCalledOnce())
    expect(await filesOf(shared.mock.calls[0]?.[0])).toEqual([
      { name: 'tapetrue.json.txt', type: 'text/plain', text: '{"schema":9}' },
    ])
  })

  it('left by her, nothing is said: that is no error', async () => {
    const shared = browserThatShares(refusal('AbortError'))
    const screen = await render(ShareUnderTest, { kind: 'application/pdf', make: pdf })
    await screen.getByRole('button', key).click()
    await vi.waitFor(() => expect(shared).toHaveBeenCalledOnce())
    await expect.element(screen.getByRole('status')).toHaveTextContent(/^$/)
  })

  it('refused by the browser, she is told to save it instead', async () => {
    browserThatShares(refusal('NotAllowedError'))
    const screen = await render(ShareUnderTest, { kind: 'application/pdf', make: pdf })
    await screen.getByRole('button', key).click()
    await expect.element(screen.getByText('Save it to a file instead')).toBeVisible()
  })

  it('made too slowly for the press, it waits for one more and is not made again', async () => {
    const shared = browserThatShares(() => Promise.resolve())
    const active = vi.spyOn(navigator.userActivation, 'isActive', 'get').mockReturnValue(false)
    const make = vi.fn(pdf)
    const screen = await render(ShareUnderTest, { kind: 'application/pdf', make })
    await screen.getByRole('button', key).click()
    await expect.element(screen.getByText('Ready to be shared.')).toBeVisible()
    expect(shared).not.toHaveBeenCalled()
    active.mockRestore()
    await screen.getByRole('button', key).click()
    await vi.waitFor(() => expect(shared).toHaveBeenCalledOnce())
    expect(make).toHaveBeenCalledOnce()
  })
})

describe('where only saving is shown', () => {
  it('the browser has no share sheet', async () => {
    const screen = await render(ShareUnderTest, { kind: 'application/pdf', make: pdf })
    expect(screen.getByRole('button', key).query()).toBeNull()
  })
  it('it hands on no file of this kind', async () => {
    browserThatShares(
      () => Promise.resolve(),
      ({ files = [] }) => files.every(({ type }) => type === 'image/jpeg'),
    )
    const screen = await render(ShareUnderTest, { kind: 'application/pdf', make: pdf })
    expect(screen.getByRole('button', key).query()).toBeNull()
  })
})
