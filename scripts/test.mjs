/**
 * All tests: types, lint, format, build, unit and property tests, components in a browser and
 * journeys through the built app, several stages at a time. What a stage says is printed whole when it
 * ends; the first that fails is named and ends the run.
 */
import { spawn, spawnSync } from 'node:child_process'
import { findChromium } from './chromium.mjs'

const NO_BROWSER =
  'The tests need a Chromium or Chrome: install one (on Debian: apt-get install chromium), or set CHROMIUM to its path, and run npm test again.'

/** @typedef {readonly [name: string, command: string, words: readonly string[]]} Stage */

/**
 * Rows of stages, run side by side: a stage keeps less than one core busy, for it waits for files and
 * browsers, and three fill two cores. @type {readonly (readonly Stage[])[]}
 */
const ROWS = [
  [
    [
      'unit and property tests',
      'npx',
      ['vitest', 'run', '--project', 'unit', '--project', 'german'],
    ],
  ],
  [
    ['build', 'npx', ['vite', 'build', '--logLevel', 'warn']],
    ['journeys', 'npx', ['playwright', 'test']],
  ],
  [
    ['types', 'npx', ['svelte-check', '--tsconfig', './tsconfig.json', '--fail-on-warnings']],
    ['lint', 'npx', ['eslint', '.', '--max-warnings', '0']],
    ['format', 'npx', ['prettier', '--check', '--log-level', 'warn', '.']],
    ['components in a browser', 'npx', ['vitest', 'run', '--project', 'components']],
  ],
]

const onWindows = process.platform === 'win32'

function install(/** @type {readonly string[]} */ words) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  spawnSync('apt-get', words, { stdio: 'inherit', env })
}

function browser() {
  const found = findChromium()
  if (found) return found
  if (process.getuid?.() === 0 && process.platform === 'linux') {
    console.log("No Chromium here; installing Debian's.")
    install(['update'])
    install(['install', '-y', '--no-install-recommends', 'chromium'])
  }
  return findChromium()
}

/** What runs now, with what it has said so far. @type {Map<import('node:child_process').ChildProcess, { name: string, said: Buffer[] }>} */
const running = new Map()

/** Ends what still runs, each with all it has started, and leaves. */
function leave(/** @type {number} */ code) {
  for (const [{ pid }, { name, said }] of running) {
    console.log(`\n== ${name}: stopped before its end`)
    if (code !== 1) process.stdout.write(Buffer.concat(said))
    if (pid === undefined) continue
    if (onWindows) spawnSync('taskkill', ['/pid', String(pid), '/T', '/F'])
    else
      try {
        process.kill(-pid)
      } catch {
        // It has ended by itself just now.
      }
  }
  process.exit(code)
}

/**
 * Runs a stage to its end; one that fails ends everything.
 *
 * @param {Stage} stage
 * @param {string} chromium path of the browser
 * @returns {Promise<void>}
 */
function run([name, command, words], chromium) {
  console.log(`${name}: begun`)
  const began = performance.now()
  const child = spawn(command, words, {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, CHROMIUM: chromium },
    shell: onWindows,
    // A group of its own, so that it can be ended with all it has started.
    detached: !onWindows,
  })
  /** @type {Buffer[]} */
  const said = []
  for (const from of [child.stdout, child.stderr]) from?.on('data', (part) => said.push(part))
  running.set(child, { name, said })
  return new Promise((done) => {
    child.on('error', (problem) => said.push(Buffer.from(`${problem.message}\n`)))
    child.on('close', (code) => {
      running.delete(child)
      console.log(`\n== ${name}`)
      process.stdout.write(Buffer.concat(said))
      if (code !== 0) {
        console.error(`\n${name}: failed`)
        leave(1)
      }
      console.log(`${name}: passed in ${((performance.now() - began) / 1000).toFixed(0)} s`)
      done()
    })
  })
}

const chromium = browser()
if (!chromium) {
  console.error(NO_BROWSER)
  process.exit(1)
}
process.on('SIGINT', () => leave(130))
process.on('SIGTERM', () => leave(143))

await Promise.all(
  ROWS.map(async (row) => {
    for (const stage of row) await run(stage, chromium)
  }),
)
console.log('\nAll tests passed.')
