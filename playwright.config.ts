import { defineConfig } from '@playwright/test'
import { CHROMIUM_FLAGS, findChromium } from './scripts/chromium.mjs'

const PORT = 4187

/** Journeys through the built app, served as `npm start` serves it. */
export default defineConfig({
  testDir: 'tests/journeys',
  outputDir: 'test-results',
  // Patience, not a claim: on a machine that has other work everything takes many times as long.
  timeout: 1_200_000,
  expect: { timeout: 120_000 },
  // Each file has a browser, and where it needs one a camera, of its own; only the served app is shared.
  workers: 2,
  reporter: [['list']],
  use: {
    baseURL: `http://127.0.0.1:${PORT}`,
    launchOptions: { executablePath: findChromium() ?? 'chromium', args: CHROMIUM_FLAGS },
    viewport: { width: 1440, height: 900 },
    // Every journey begins on an empty device, and keeping the whole app there for use without a net
    // takes more of the processor than many a journey itself: only those that look at it have it kept.
    serviceWorkers: 'block',
    actionTimeout: 180_000,
  },
  webServer: {
    command: 'node scripts/serve.mjs',
    url: `http://127.0.0.1:${PORT}`,
    env: { PORT: `${PORT}`, CI: '1' },
    reuseExistingServer: false,
  },
})
