/**
 * The test of every journey: whatever else it asks, no request of any page of it may leave for
 * another origin than this machine. `blob:` and `data:` never leave the page.
 */
import { expect, test as base, type BrowserContext } from '@playwright/test'

export { expect }

export const test = base.extend<{ nothingLeaves: undefined }>({
  nothingLeaves: [
    async ({ context, browser }, use) => {
      const asked: string[] = []
      const listen = (to: BrowserContext) => to.on('request', (r) => asked.push(r.url()))
      listen(context)
      browser.on('context', listen)
      await use(undefined)
      browser.off('context', listen)
      const foreign = asked.filter((url) => {
        const { protocol, hostname } = new URL(url)
        return !['blob:', 'data:'].includes(protocol) && hostname !== '127.0.0.1'
      })
      expect(foreign, 'requests to another origin').toEqual([])
      // A page that asked for nothing at all would prove nothing.
      if (context.pages().length > 0) expect(asked.length).toBeGreaterThan(0)
    },
    { auto: true },
  ],
})
