/** The device's camera for the live picture: asked for once, let go for certain, refused in words. */
import { STREAM_WORDS } from './live.words.ts'

export type Facing = 'user' | 'environment'

export type StreamOutcome =
  | { readonly ok: true; readonly stream: MediaStream }
  | { readonly ok: false; readonly reason: string }

const REFUSALS: Readonly<Record<string, string>> = {
  NotAllowedError: STREAM_WORDS.notAllowed,
  NotFoundError: STREAM_WORDS.notFound,
  NotReadableError: STREAM_WORDS.notReadable,
}

/** Without `resizeMode` a browser may cut the frame to the size asked for (W3C Media Capture, 4.3). */
interface WholeFrame extends MediaTrackConstraints {
  readonly resizeMode: string
}

/**
 * Asks for the largest whole frame the camera gives. No sound is asked for.
 * @param otherwise the way on without a camera, said after the reason
 */
export async function openStream(
  facing: Facing,
  otherwise = STREAM_WORDS.chooseInstead,
): Promise<StreamOutcome> {
  const refused = (sentence: string): StreamOutcome => ({
    ok: false,
    reason: `${sentence} ${otherwise}`,
  })
  // Absent where the page was not served safely, whatever the type says.
  const devices: MediaDevices | undefined = navigator.mediaDevices
  if (!devices) return refused(STREAM_WORDS.unsafe)
  const video: WholeFrame = {
    facingMode: { ideal: facing },
    width: { ideal: 2560 },
    height: { ideal: 1920 },
    resizeMode: 'none',
  }
  try {
    return { ok: true, stream: await devices.getUserMedia({ video, audio: false }) }
  } catch (problem) {
    const name = problem instanceof Error ? problem.name : ''
    return refused(REFUSALS[name] ?? STREAM_WORDS.unknown)
  }
}

export function letGo(stream: MediaStream | undefined): void {
  for (const track of stream?.getTracks() ?? []) track.stop()
}

/** Whether there is another camera to turn to; names are not asked for. */
export async function severalCameras(): Promise<boolean> {
  try {
    const all = await navigator.mediaDevices.enumerateDevices()
    return all.filter((device) => device.kind === 'videoinput').length > 1
  } catch {
    return false
  }
}
