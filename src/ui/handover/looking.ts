/** Looks for a square in the frames of a video, one after another, until it is told to stop. */
import { textIn } from './qr-code.ts'

/** Pixels across in which a square is looked for: enough for 57 modules that fill a quarter. */
const WIDTH = 960
const BETWEEN_MS = 120

/** What some browsers bring themselves (W3C Shape Detection, a draft); quicker than any library. */
interface OwnDetector {
  detect(from: HTMLVideoElement): Promise<readonly { readonly rawValue: string }[]>
}
type OwnDetectors = (new (wish: { formats: string[] }) => OwnDetector) & {
  getSupportedFormats(): Promise<readonly string[]>
}

/** Calls `found` with the text of every square it reads; gives the way to stop it. */
export function lookFor(video: HTMLVideoElement, found: (text: string) => void): () => void {
  let stopped = false
  let timer: ReturnType<typeof setTimeout> | undefined
  const canvas = new OffscreenCanvas(1, 1)
  const own = ownDetector()

  async function look(): Promise<void> {
    const text = video.videoWidth > 0 ? ((await byOwn(await own, video)) ?? inFrame()) : undefined
    if (stopped) return
    if (text !== undefined && text !== '') found(text)
    timer = setTimeout(() => void look(), BETWEEN_MS)
  }
  function inFrame(): string | undefined {
    const share = Math.min(1, WIDTH / video.videoWidth)
    canvas.width = Math.round(video.videoWidth * share)
    canvas.height = Math.round(video.videoHeight * share)
    const context = canvas.getContext('2d', { willReadFrequently: true, alpha: false })
    context?.drawImage(video, 0, 0, canvas.width, canvas.height)
    const frame = context?.getImageData(0, 0, canvas.width, canvas.height)
    return frame && textIn(frame)
  }
  void look()
  return () => {
    stopped = true
    clearTimeout(timer)
  }
}

async function ownDetector(): Promise<OwnDetector | undefined> {
  const { BarcodeDetector } = globalThis as { BarcodeDetector?: OwnDetectors }
  try {
    const formats = await BarcodeDetector?.getSupportedFormats()
    if (!BarcodeDetector || !formats?.includes('qr_code')) return undefined
    return new BarcodeDetector({ formats: ['qr_code'] })
  } catch {
    return undefined // named, and not there after all
  }
}
async function byOwn(
  own: OwnDetector | undefined,
  video: HTMLVideoElement,
): Promise<string | undefined> {
  try {
    return (await own?.detect(video))?.[0]?.rawValue
  } catch {
    return undefined // the library looks at the same frame
  }
}
