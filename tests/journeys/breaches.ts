/** What the screen breaks by axe-core, a reference library, run once in the page itself. */
import axe from 'axe-core'
import type { Page } from '@playwright/test'

/** WCAG 2.2 A and AA, by the names axe-core has for them. */
const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']

declare global {
  interface Window {
    axe?: typeof axe
  }
}

/** Each breach with its rule and its first place; by WCAG 2.2 A and AA, or by every rule there is. */
export async function breaches(
  page: Page,
  by: 'wcag' | 'every rule' = 'wcag',
): Promise<readonly string[]> {
  if (!(await page.evaluate(() => window.axe !== undefined))) await page.evaluate(axe.source)
  const options: axe.RunOptions = {
    resultTypes: ['violations'],
    ...(by === 'wcag' && { runOnly: { type: 'tag', values: WCAG } }),
  }
  return page.evaluate(async (how) => {
    if (!window.axe) throw new Error('axe-core did not arrive in the page')
    const { violations } = await window.axe.run(document, how)
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.target.join(' ')}`)
  }, options)
}
