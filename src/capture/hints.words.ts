/** One short hint at a time, read from three steps away and spoken. */
import type { HintId } from './hints.ts'

export const HINT_WORDS: Readonly<Record<HintId, string>> = {
  nobody: 'Step into the picture.',
  stepBack: 'Step back.',
  feet: 'Feet in view: a little back, or tilt the camera down.',
  head: 'Head in view: a little back, or tilt the camera up.',
  nearer: 'Come nearer.',
  goLeft: 'A step to your left.',
  goRight: 'A step to your right.',
  middle: 'Stand in the middle.',
  faceCamera: 'Face the camera.',
  turnSide: 'Turn your side to the camera.',
  turnBack: 'Turn your back to the camera.',
  armsAway: 'Arms a little away.',
  armsDown: 'Arms lower, a little away.',
  handDown: 'Hand down again.',
}
