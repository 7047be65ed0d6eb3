/** The licences of what is shipped, read from the installed packages; equal texts are given once. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

const ROOT = new URL('../../', import.meta.url).pathname

interface Locked {
  readonly version?: string
  readonly license?: string
  readonly dev?: boolean
  readonly optional?: boolean
  readonly dependencies?: Readonly<Record<string, string>>
}
type Lock = Readonly<Record<string, Locked>>

/** Needed only to build, by their place in the list, and yet in the page or its service worker. */
const BUILT_IN = [
  'svelte',
  'workbox-window',
  'workbox-core',
  'workbox-precaching',
  'workbox-routing',
]

export function notices(): string {
  const lock = (
    JSON.parse(readFileSync(join(ROOT, 'package-lock.json'), 'utf8')) as { packages: Lock }
  ).packages
  const shipped = Object.keys(lock)
    .filter((path) => path !== '' && (!lock[path]?.dev || builtIn(lock).has(path)))
    .filter((path) => existsSync(join(ROOT, path)))
    .sort()
  const byText = new Map<string, string[]>()
  for (const path of shipped) {
    const { version = '', license = 'no licence named' } = lock[path] ?? {}
    const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length)
    const text =
      licenceText(join(ROOT, path)) ?? `(the package holds no licence text; it names ${license})`
    const line = `${name} ${version} (${license})`
    byText.set(text, [...new Set([...(byText.get(text) ?? []), line])])
  }
  const parts = [...byText]
    .map(([text, names]) => ({ text, names: names.sort() }))
    .sort((a, b) => (a.names[0] ?? '').localeCompare(b.names[0] ?? '', 'en'))
  const weights = readFileSync(join(ROOT, 'public/models/LICENCE-NOTE.md'), 'utf8').trim()
  return (
    [HEAD, ...parts.map(({ text, names }) => `${names.join('\n')}\n\n${text}`), weights].join(
      `\n\n${'='.repeat(72)}\n\n`,
    ) + '\n'
  )
}

const HEAD = `Tapetrue holds work of others. This list is written by "npm run notices" from the installed
packages: every package the page may hold code, faces or weights of, with its licence.`

/** The built-in packages with all they need. */
function builtIn(lock: Lock): ReadonlySet<string> {
  const all = new Set<string>()
  const add = (name: string): void => {
    const path = `node_modules/${name}`
    if (all.has(path) || !lock[path]) return
    all.add(path)
    for (const needed of Object.keys(lock[path].dependencies ?? {})) add(needed)
  }
  for (const name of BUILT_IN) add(name)
  return all
}

function licenceText(folder: string): string | undefined {
  const file = readdirSync(folder).find((name) => /^(licen[cs]e|copying)(\.|-|$)/i.test(name))
  return file && readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n').trim()
}
