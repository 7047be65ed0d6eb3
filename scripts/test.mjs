/**
 * All tests, in the order in which a fault is cheapest to find: types, lint, unit and property
 * tests, components in a browser, journeys through the built app.
 */
import { spawnSync } from 'node:child_process'
import { findChromium } from './chromium.mjs'

const NO_BROWSER =
  'The tests need a Chromium or Chrome: install one (on Debian: apt-get install chromium), or set CHROMIUM to its path, and run npm test again.'

function run(
  /** @type {string} */ command,
  /** @type {readonly string[]} */ words,
  env = process.env,
) {
  return (
    spawnSync(command, words, { stdio: 'inherit', env, shell: process.platform === 'win32' })
      .status === 0
  )
}

function browser() {
  const found = findChromium()
  if (found) return found
  if (process.getuid?.() === 0 && process.platform === 'linux') {
    console.log("No Chromium here; installing Debian's.")
    const quiet = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
    run('apt-get', ['update'], quiet)
    run('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], quiet)
  }
  return findChromium()
}

const STEPS = [
  ['types', 'npx', ['svelte-check', '--tsconfig', './tsconfig.json', '--fail-on-warnings']],
  ['lint', 'npx', ['eslint', '.', '--max-warnings', '0']],
  ['format', 'npx', ['prettier', '--check', '--log-level', 'warn', '.']],
  ['unit and property tests', 'npx', ['vitest', 'run', '--project', 'unit', '--project', 'german']],
  ['components in a browser', 'npx', ['vitest', 'run', '--project', 'components']],
  ['build', 'npx', ['vite', 'build', '--logLevel', 'warn']],
  ['journeys', 'npx', ['playwright', 'test']],
]

const chromium = browser()
if (!chromium) {
  console.error(NO_BROWSER)
  process.exit(1)
}
for (const [name, command, words] of STEPS) {
  console.log(`\n== ${name}`)
  const began = performance.now()
  if (
    !run(String(command), /** @type {string[]} */ (words), { ...process.env, CHROMIUM: chromium })
  ) {
    console.error(`\n${name}: failed`)
    process.exit(1)
  }
  console.log(`${name}: passed in ${((performance.now() - began) / 1000).toFixed(0)} s`)
}
console.log('\nAll tests passed.')
