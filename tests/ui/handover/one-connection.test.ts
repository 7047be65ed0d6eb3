/** Connections are opened in one file, and with no server named (W3C WebRTC, RTCConfiguration). */
import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

const SRC = new URL('../../../src/', import.meta.url).pathname
const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.(ts|svelte)$/.test(path))
  .map((path) => ({ path, text: readFileSync(SRC + path, 'utf8') }))

test('one file makes connections', () => {
  const made = files.filter(({ text }) => /RTC(Peer|Ice|Configuration)|setConfiguration/.test(text))
  expect(made.map(({ path }) => path)).toEqual(['ui/handover/peer.ts'])
})

test('and it names no server', () => {
  const peer = files.find(({ path }) => path === 'ui/handover/peer.ts')?.text ?? ''
  expect(peer.match(/new RTCPeerConnection\(.*\)/g)).toEqual([
    'new RTCPeerConnection({ iceServers: [] })',
  ])
  for (const { path, text } of files) expect(text, path).not.toMatch(/\b(stuns?|turns?):[a-z0-9]/i)
})
