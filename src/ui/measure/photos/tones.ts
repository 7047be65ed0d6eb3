/** Tones for a count-down she hears with her back to the screen. Made by the browser, no file. */
export type ToneName = 'tick' | 'last' | 'taken' | 'broken' | 'done'

/** Hertz and milliseconds, one after the other. A low tone stops, a rising one is done. */
const TONES: Readonly<Record<ToneName, readonly (readonly [hertz: number, ms: number])[]>> = {
  tick: [[660, 90]],
  last: [[880, 160]],
  taken: [
    [990, 110],
    [1320, 220],
  ],
  broken: [
    [330, 160],
    [247, 260],
  ],
  done: [
    [660, 140],
    [880, 140],
    [1320, 340],
  ],
}
/** Loud enough across a room, below the point where a phone's loudspeaker rattles (from trial). */
const LOUDNESS = 0.35
/** Rise and fall that keep a tone from clicking. */
const EDGE_S = 0.012

export interface Tones {
  on: boolean
  play(name: ToneName): void
  close(): void
}

/** Made while a key is pressed: a browser starts sound only then. */
export function openTones(): Tones {
  let context: AudioContext | undefined
  try {
    context = new AudioContext()
  } catch {
    // No sound on this device: the digits and words remain.
  }
  return {
    on: true,
    play(name) {
      if (!this.on || !context) return
      void context.resume()
      let at = context.currentTime + EDGE_S
      for (const [hertz, ms] of TONES[name]) {
        const [tone, gain] = [context.createOscillator(), context.createGain()]
        const end = at + ms / 1000
        tone.frequency.value = hertz
        gain.gain.setValueAtTime(0, at)
        gain.gain.linearRampToValueAtTime(LOUDNESS, at + EDGE_S)
        gain.gain.setValueAtTime(LOUDNESS, end - EDGE_S)
        gain.gain.linearRampToValueAtTime(0, end)
        tone.connect(gain).connect(context.destination)
        tone.start(at)
        tone.stop(end)
        at = end + 0.03
      }
    },
    close() {
      void context?.close()
      context = undefined
    },
  }
}
