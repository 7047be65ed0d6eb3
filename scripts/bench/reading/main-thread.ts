/** The longest task of the page's own thread, by the browser's own record. */
import type { Browser, Page } from 'playwright-core'

declare global {
  interface Window {
    benchLongTasks?: number[]
  }
}

export interface LongestTask {
  /** By the clock, ms; other work on the machine lengthens it. */
  readonly longestTaskMs: number
  /** Of the processor alone, ms. */
  readonly longestTaskCpuMs: number
  /** Tasks over 50 ms as the page itself is told of them (Long Tasks API, W3C). */
  readonly longTasks: number
}

/** Before the page opens. */
export async function watchLongTasks(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.benchLongTasks = []
    new PerformanceObserver((list) => {
      window.benchLongTasks?.push(...list.getEntries().map(({ duration }) => duration))
    }).observe({ type: 'longtask' })
  })
}

interface TraceEvent {
  readonly name: string
  readonly pid: number
  readonly tid: number
  readonly dur?: number
  readonly tdur?: number
  readonly args?: { readonly name?: string }
}

/** No other page may be open: every main thread of a page is looked at. */
export async function longestTask(
  browser: Browser,
  page: Page,
  work: () => Promise<unknown>,
): Promise<LongestTask> {
  await page.evaluate(() => window.benchLongTasks?.splice(0))
  await browser.startTracing(page, { categories: ['toplevel', '__metadata'] })
  await work()
  const trace = JSON.parse((await browser.stopTracing()).toString()) as {
    traceEvents: readonly TraceEvent[]
  }
  const longTasks = await page.evaluate(() => window.benchLongTasks?.length ?? 0)
  const events = trace.traceEvents
  const main = new Set(
    events.flatMap(({ name, args, pid, tid }) =>
      name === 'thread_name' && args?.name === 'CrRendererMain' ? [`${pid} ${tid}`] : [],
    ),
  )
  const tasks = events.filter(
    ({ name, pid, tid }) => name === 'ThreadControllerImpl::RunTask' && main.has(`${pid} ${tid}`),
  )
  if (tasks.length === 0) throw new Error('the trace holds no task of the page')
  const most = (of: (task: TraceEvent) => number | undefined): number =>
    Math.round(Math.max(...tasks.map((task) => of(task) ?? 0)) / 100) / 10
  return {
    longestTaskMs: most(({ dur }) => dur),
    longestTaskCpuMs: most(({ tdur }) => tdur),
    longTasks,
  }
}
