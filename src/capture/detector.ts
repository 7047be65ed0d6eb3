/**
 * The pose model, and the only file that knows it. BlazePose "full" through pose-detection's tfjs
 * runtime on the WebAssembly backend: it needs no WebGL and runs in a worker and in plain Node.
 * Weights: see public/models and models-notes/blazepose.md. Nothing is fetched from elsewhere.
 */
import { createDetector, SupportedModels } from '@tensorflow-models/pose-detection'
import { setWasmPaths } from '@tensorflow/tfjs-backend-wasm'
import * as tf from '@tensorflow/tfjs-core'
import { bodyFrame } from './frame.ts'
import { glance, mirroredPerson, withoutHer, type Person } from './person.ts'
import { mirrored, type Picture } from './picture.ts'

export interface Detector {
  /** The person of the picture, or undefined when the model sees none. */
  find(picture: Picture): Promise<Person | undefined>
  /** Whether somebody else stands in the picture beside the person found: a second look, without her. */
  hasCompany(picture: Picture, person: Person): Promise<boolean>
  close(): void
}

/** A web address, or a handler that reads the file itself (plain Node). */
export type WeightSource = string | tf.io.IOHandler

export interface DetectorFiles {
  readonly detector: WeightSource
  readonly landmarks: WeightSource
  /** Folder of the WebAssembly files, with a slash at the end. */
  readonly wasm: string
}

/** Files under a base address as the build lays them out. */
export const filesUnder = (base: string): DetectorFiles => ({
  detector: new URL('models/blazepose-detector.json', base).href,
  landmarks: new URL('models/blazepose-full.json', base).href,
  wasm: new URL('wasm/', base).href,
})

/** Index of the alpha plane of the model's mask; red differs between runtimes, alpha does not. */
const ALPHA = 3

/** The model sees the picture at 224 px across anyway: a quarter of the pixels each way will do. */
const GLANCE = 4
/**
 * Below this score, not upright, or smaller than this share of her, a second person is a chair or a
 * shadow: in 96 rendered rooms none was seen.
 */
const [SURE_OF_OTHER, LEAST_OF_HERS] = [0.6, 0.4]

/** Throws when WebAssembly is blocked: setBackend would go on with another backend in silence. */
export async function openDetector(files: DetectorFiles): Promise<Detector> {
  setWasmPaths(files.wasm)
  const started = await tf.setBackend('wasm')
  await tf.ready()
  if (!started || tf.getBackend() !== 'wasm')
    throw new Error(`pose model: WebAssembly did not start, the backend is "${tf.getBackend()}"`)
  const detector = await createDetector(SupportedModels.BlazePose, {
    runtime: 'tfjs',
    modelType: 'full',
    enableSegmentation: true,
    enableSmoothing: false,
    smoothSegmentation: false,
    detectorModelUrl: files.detector,
    landmarkModelUrl: files.landmarks,
  })
  const look = async (picture: Picture): Promise<Person | undefined> => {
    // Without a reset the next still is searched where the last person stood.
    detector.reset()
    const input = tf.tensor3d(rgb(picture), [picture.height, picture.width, 3], 'int32')
    try {
      const [pose] = await detector.estimatePoses(input, { maxPoses: 1, flipHorizontal: false })
      if (!pose) return undefined
      const joints = pose.keypoints.map(({ name, x, y, score }) => [
        name ?? '',
        { at: { x, y }, score: score ?? 0 },
      ])
      const tensor = await pose.segmentation?.mask.toTensor()
      if (!tensor) throw new Error('pose model: a person came without a mask')
      const data = await alphaOf(tensor)
      tensor.dispose()
      const mask = { width: picture.width, height: picture.height, data }
      return { score: pose.score ?? 0, joints: Object.fromEntries(joints), mask }
    } finally {
      input.dispose()
    }
  }
  return {
    find: async (picture) => {
      const person = await look(picture)
      if (person) return person
      // A person just below the model's threshold is often found in the mirrored picture.
      const turned = await look(mirrored(picture))
      return turned && mirroredPerson(turned)
    },
    hasCompany: async (picture, person) => {
      const other = await look(withoutHer(...glance(picture, person, GLANCE)))
      const [hers, theirs] = [bodyFrame(person.joints), other && bodyFrame(other.joints)]
      if (!other || !hers || !theirs || other.score < SURE_OF_OTHER) return false
      return theirs.torso * GLANCE >= LEAST_OF_HERS * hers.torso
    },
    close: () => detector.dispose(),
  }
}

function rgb({ data, width, height }: Picture): Int32Array {
  const out = new Int32Array(width * height * 3)
  for (let from = 0, to = 0; from < data.length; from += 4) {
    out[to++] = data[from] ?? 0
    out[to++] = data[from + 1] ?? 0
    out[to++] = data[from + 2] ?? 0
  }
  return out
}

async function alphaOf(mask: tf.Tensor3D): Promise<Uint8Array> {
  const values = await mask.data()
  const out = new Uint8Array(values.length / 4)
  for (let k = 0; k < out.length; k++) out[k] = Math.round((values[k * 4 + ALPHA] ?? 0) * 255)
  return out
}
