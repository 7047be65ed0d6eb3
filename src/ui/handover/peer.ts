/**
 * The connection to the other device, and the only place of this program that opens one. No server
 * is named, so a browser finds nothing but its own addresses: the two devices meet in the network
 * they are both in, or not at all. Nothing is opened before she asks for it.
 * Source: W3C WebRTC, with RFC 8445 (host candidates) and RFC 8831 (data channels).
 */
import type { Bytes } from '../../handover/proof.ts'
import { describedIn, sessionOf, type Description } from '../../handover/description.ts'

export interface PeerHears {
  readonly opened: () => void
  readonly heard: (bytes: Bytes) => void
  /** It was open and is gone, or cannot be opened. */
  readonly lost: () => void
}
/** What the screen needs of it; a test joins two in memory. */
export interface PeerLike {
  offer(): Promise<Description | undefined>
  answer(other: Description): Promise<Description | undefined>
  join(other: Description): Promise<void>
  send(bytes: Bytes): Promise<void>
  close(): void
}

/** Addresses of its own a browser knows at once; a network that is slow to answer is left out. */
const GATHERING_MS = 4_000
/** Bytes that may wait in the channel before the next part is read, and when it goes on. */
const MOST_WAITING = 1_048_576
const FEW_WAITING = 262_144

export class Peer implements PeerLike {
  readonly #connection = new RTCPeerConnection({ iceServers: [] })
  readonly #channel: RTCDataChannel

  constructor(hears: PeerHears) {
    // Agreed beforehand, so neither side has to wait for the other to open it.
    const channel = this.#connection.createDataChannel('handover', { negotiated: true, id: 0 })
    channel.binaryType = 'arraybuffer'
    channel.bufferedAmountLowThreshold = FEW_WAITING
    channel.onopen = hears.opened
    channel.onclose = hears.lost
    channel.onmessage = ({ data }: MessageEvent<unknown>) => {
      if (data instanceof ArrayBuffer) hears.heard(new Uint8Array(data))
    }
    this.#connection.onconnectionstatechange = () => {
      if (this.#connection.connectionState === 'failed') hears.lost()
    }
    this.#channel = channel
  }

  /** What the other device has to know; undefined when this device is in no network. */
  offer(): Promise<Description | undefined> {
    return this.#described()
  }
  async answer(other: Description): Promise<Description | undefined> {
    const sdp = sessionOf('offer', other)
    await this.#connection.setRemoteDescription({ type: 'offer', sdp })
    return this.#described()
  }
  join(other: Description): Promise<void> {
    const sdp = sessionOf('answer', other)
    return this.#connection.setRemoteDescription({ type: 'answer', sdp })
  }

  async #described(): Promise<Description | undefined> {
    await this.#connection.setLocalDescription()
    await this.#gathered()
    const about = describedIn(this.#connection.localDescription?.sdp ?? '')
    return about && about.candidates.length > 0 ? about : undefined
  }
  #gathered(): Promise<void> {
    const connection = this.#connection
    return new Promise((done) => {
      const look = (): void => {
        if (connection.iceGatheringState === 'complete') done()
      }
      connection.onicegatheringstatechange = look
      setTimeout(done, GATHERING_MS)
      look()
    })
  }

  /** Resolves when there is room for more, or the channel is closed. */
  async send(bytes: Bytes): Promise<void> {
    const channel = this.#channel
    if (channel.readyState !== 'open') return
    channel.send(bytes)
    if (channel.bufferedAmount <= MOST_WAITING) return
    const events = new AbortController()
    await new Promise<void>((room) => {
      for (const event of ['bufferedamountlow', 'closing', 'close'])
        channel.addEventListener(event, () => room(), { signal: events.signal })
    })
    events.abort()
  }

  close(): void {
    this.#channel.onclose = this.#channel.onmessage = null
    this.#connection.onconnectionstatechange = null
    this.#channel.close()
    this.#connection.close()
  }
}
