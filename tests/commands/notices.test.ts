/** The served list of licences is what the installed packages say. */
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { notices } from '../../scripts/notices/gather.ts'

const served = readFileSync(new URL('../../public/notices.txt', import.meta.url), 'utf8')

test('the list is current', () => {
  expect(served).toBe(notices())
})

test('names what the page plainly holds', () => {
  const shipped = [
    'svelte',
    'dexie',
    'valibot',
    'comlink',
    'js-aruco2',
    'lean-qr',
    'qr',
    '@cantoo/pdf-lib',
    '@tensorflow/tfjs-core',
    '@tensorflow-models/pose-detection',
    '@fontsource-variable/brygada-1918',
    'workbox-window',
    'dejavu-fonts-ttf',
  ]
  for (const name of shipped) expect(served).toMatch(new RegExp(`^${name} \\d`, 'm'))
  expect(served).toContain('SIL OPEN FONT LICENSE')
})
