/**
 * Every connection a page opens, watched from before its first script: with which servers it was
 * made, and which candidates it found, was told and wrote into its descriptions.
 * Sources: W3C WebRTC (iceServers, iceTransportPolicy), RFC 8839, 5.1 (`typ`).
 */
import type { Page } from '@playwright/test'
import { expect } from './journey.ts'

interface Watched {
  readonly servers: unknown[]
  readonly candidates: string[]
  readonly tracks: MediaStreamTrack[]
  /** Files the page has given an address to, in order. */
  readonly files: (Blob | MediaSource)[]
  made: number
}
declare global {
  interface Window {
    watched: Watched
  }
}

export async function watchConnections(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const watched: Watched = { servers: [], candidates: [], tracks: [], files: [], made: 0 }
    window.watched = watched
    const named = (config: RTCConfiguration | undefined): void => {
      watched.servers.push(...(config?.iceServers ?? ['no list given']))
    }
    const inside = (sdp: string | undefined): void => {
      watched.candidates.push(...((sdp ?? '').match(/candidate:.*/g) ?? []))
    }
    const Native = window.RTCPeerConnection
    window.RTCPeerConnection = class extends Native {
      constructor(config?: RTCConfiguration) {
        super(config)
        watched.made += 1
        named(config)
        this.addEventListener('icecandidate', ({ candidate }) => inside(candidate?.candidate))
        this.addEventListener('icegatheringstatechange', () => inside(this.localDescription?.sdp))
      }
      override setConfiguration(config?: RTCConfiguration): void {
        named(config)
        super.setConfiguration(config)
      }
      override setRemoteDescription(description: RTCSessionDescriptionInit): Promise<void> {
        inside(description.sdp)
        return super.setRemoteDescription(description)
      }
      override addIceCandidate(candidate?: RTCIceCandidateInit | null): Promise<void> {
        inside(candidate?.candidate)
        return super.addIceCandidate(candidate)
      }
    }
    const address = URL.createObjectURL.bind(URL)
    URL.createObjectURL = (file) => {
      watched.files.push(file)
      return address(file)
    }
    const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices)
    navigator.mediaDevices.getUserMedia = async (wanted) => {
      const stream = await ask(wanted)
      watched.tracks.push(...stream.getTracks())
      return stream
    }
  })
}

export const connections = (page: Page): Promise<number> => page.evaluate(() => window.watched.made)
export const cameras = (page: Page): Promise<string[]> =>
  page.evaluate(() => window.watched.tracks.map(({ readyState }) => readyState))

/** SHA-256 of the pictures the page shows from its own memory, in order. */
export const pictureDigests = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const pictures = window.watched.files.filter((file) => file instanceof Blob)
    const all = pictures.map(async (file) =>
      crypto.subtle.digest('SHA-256', await file.arrayBuffer()),
    )
    return (await Promise.all(all)).map((digest) =>
      [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join(''),
    )
  })

/** Fails on any server, and on any candidate that is not an address of the device itself. */
export async function onlyItsOwnAddresses(page: Page): Promise<void> {
  const { servers, candidates } = await page.evaluate(() => window.watched)
  expect(servers).toEqual([])
  expect(candidates.length).toBeGreaterThan(0)
  expect(candidates.filter((line) => !/ typ host( |$)/.test(line))).toEqual([])
}
