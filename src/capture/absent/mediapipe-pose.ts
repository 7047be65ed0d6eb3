/**
 * Stands in for @mediapipe/pose, which pose-detection imports but which we never run: the
 * tfjs runtime is used, because it needs no WebGL and works in a worker.
 */
export class Pose {
  constructor() {
    throw new Error('@mediapipe/pose is not part of this build; use runtime "tfjs"')
  }
}
export const VERSION = 'absent'
