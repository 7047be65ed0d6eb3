import { defineConfig } from '@playwright/test'
import { CHROMIUM_FLAGS, findChromium } from './scripts/chromium.mjs'

const PORT = 4187

/** Journeys through the built app, served as `npm start` serves it. */
export default defineConfig({
  testDir: 'tests/journeys',
  outputDir: 'test-results',
  timeout: 600_000,
  expect: { timeout: 20_000 },
  workers: 1,
  reporter: [['list']],
  use: {
    baseURL: `http://127.0.0.1:${PORT}`,
    launchOptions: { executablePath: findChromium() ?? 'chromium', args: CHROMIUM_FLAGS },
    viewport: { width: 1440, height: 900 },
    actionTimeout: 60_000,
  },
  webServer: {
    command: 'node scripts/serve.mjs',
    url: `http://127.0.0.1:${PORT}`,
    env: { PORT: `${PORT}`, CI: '1' },
    reuseExistingServer: false,
  },
})
