/** The map of rooms, enforced: a room may import itself, the rooms listed, and the packages listed. */
import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, normalize, sep } from 'node:path'
import { expect, test } from 'vitest'

const SRC = new URL('../src', import.meta.url).pathname

interface Rule {
  readonly rooms: readonly string[]
  readonly packages?: readonly string[]
  /** Files that may import more, each with the one reason it exists. */
  readonly files?: Readonly<Record<string, readonly string[]>>
}

const DOMAIN = [
  'units',
  'geometry',
  'measurements',
  'capture',
  'draft',
  'fitting',
  'rounds',
  'output',
  'layout',
]
const ROOMS: Readonly<Record<string, Rule>> = {
  units: { rooms: [] },
  geometry: { rooms: ['units'] },
  measurements: { rooms: ['units'] },
  capture: {
    rooms: ['units', 'geometry', 'measurements'],
    files: {
      'capture/detector.ts': [
        '@tensorflow/tfjs-core',
        '@tensorflow/tfjs-backend-wasm',
        '@tensorflow/tfjs-converter',
        '@tensorflow-models/pose-detection',
      ],
      'capture/camera-worker.ts': ['comlink'],
      'capture/camera.ts': ['comlink'],
      'capture/card-marker.ts': ['js-aruco2'],
    },
  },
  draft: { rooms: ['units', 'geometry', 'measurements'] },
  fitting: { rooms: ['units', 'geometry', 'measurements', 'draft'] },
  rounds: { rooms: ['units', 'geometry', 'measurements', 'draft', 'fitting'] },
  output: {
    rooms: ['units', 'geometry', 'measurements', 'draft'],
    files: { 'output/pdf.ts': ['@cantoo/pdf-lib', '@cantoo/fontkit'] },
  },
  layout: { rooms: ['units', 'geometry', 'measurements', 'draft', 'output'] },
  storage: { rooms: DOMAIN, packages: ['dexie', 'valibot'] },
  handover: { rooms: ['capture', 'storage'], packages: ['valibot'] },
  ui: {
    rooms: [...DOMAIN, 'storage', 'handover'],
    packages: ['svelte', 'svelte-spa-router', '@fontsource-variable', 'dejavu-fonts-ttf'],
    files: {
      'ui/handover/qr-code.ts': ['lean-qr', 'qr'],
      'ui/cut/cloth/cloth-maker.ts': ['comlink'],
      'ui/cut/cloth/cloth-worker.ts': ['comlink'],
    },
  },
}
/** Files that stand above the rooms: where all meets. */
const ABOVE = ['main.ts', 'vite-env.d.ts']

const IMPORT =
  /(?:^|\n)\s*(?:import|export)\s[^'"]*?from\s*['"]([^'"]+)['"]|import\(\s*['"]([^'"]+)['"]\s*\)|(?:^|\n)\s*import\s*['"]([^'"]+)['"]|new URL\(\s*['"](\.[^'"]+\.ts)['"]/g

function breaches(path: string, text: string): string[] {
  if (ABOVE.includes(path)) return []
  const room = path.split(sep)[0] ?? ''
  const rule = ROOMS[room]
  if (!rule) return [`${path}: room ${room} is not on the map`]
  const packages = [...(rule.packages ?? []), ...(rule.files?.[path] ?? [])]
  return [...text.matchAll(IMPORT)].flatMap((m) => {
    const name = (m[1] ?? m[2] ?? m[3] ?? m[4]) as string
    if (!name.startsWith('.'))
      return packages.some((p) => name === p || name.startsWith(`${p}/`))
        ? []
        : [`${path}: ${room} may not import package ${name}`]
    const target = normalize(join(dirname(path), name)).split(sep)[0] ?? ''
    return target === room || rule.rooms.includes(target)
      ? []
      : [`${path}: ${room} may not import ${target}`]
  })
}

const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' }).filter((f) =>
  /\.(ts|svelte)$/.test(f),
)

test('every file keeps to its room', () => {
  expect(files.length).toBeGreaterThan(50)
  expect(files.flatMap((f) => breaches(f, readFileSync(join(SRC, f), 'utf8')))).toEqual([])
})

test('there is no file of odds and ends', () => {
  expect(
    files.filter((f) => /(^|\/)(utils?|helpers?|common|types?|index)(\.ts|\/)/.test(f)),
  ).toEqual([])
})

test('the check itself bites', () => {
  expect(breaches('draft/x.ts', "import { db } from '../storage/db.ts'")).toEqual([
    'draft/x.ts: draft may not import storage',
  ])
  expect(breaches('draft/x.ts', "import Dexie from 'dexie'")).toEqual([
    'draft/x.ts: draft may not import package dexie',
  ])
  expect(breaches('draft/x.ts', "const t = await import('@tensorflow/tfjs')")).toEqual([
    'draft/x.ts: draft may not import package @tensorflow/tfjs',
  ])
  expect(breaches('ui/x.svelte', "import Dexie from 'dexie'")).toEqual([
    'ui/x.svelte: ui may not import package dexie',
  ])
  expect(breaches('capture/x.ts', "import { tidy } from '@tensorflow/tfjs-core'")).toEqual([
    'capture/x.ts: capture may not import package @tensorflow/tfjs-core',
  ])
  expect(breaches('rounds/x.ts', "new URL('../storage/y.ts', import.meta.url)")).toEqual([
    'rounds/x.ts: rounds may not import storage',
  ])
  expect(breaches('misc/x.ts', '')).toEqual(['misc/x.ts: room misc is not on the map'])
})
