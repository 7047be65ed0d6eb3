/**
 * How she stands in one frame of the live picture, from the model's joints: what the hints need and
 * no more. Shares of the frame's width and height, y down; lengths along the body in torsos
 * (shoulder joints to hip joints). The thresholds were tried on rendered bodies, three views each.
 */
import type { Point } from '../geometry/point.ts'
import { middle } from './outline.ts'
import type { Joint } from './person.ts'

/** One frame as the model sees it; px of a picture of the given size. */
export interface Sight {
  readonly joints: Readonly<Record<string, Joint>>
  readonly width: number
  readonly height: number
}

export type Turn = 'front' | 'side' | 'back' | 'between'

export interface LivePose {
  /** Top of the head, estimated; share of the frame's height. */
  readonly crown: number
  /** Lowest point of the feet; share of the frame's height. */
  readonly foot: number
  readonly feetSeen: boolean
  /** Middle of the body; share of the frame's width. */
  readonly across: number
  readonly turn: Turn
  /** Wrist from the plumb line under its shoulder, degrees; the arm nearer to the body first. */
  readonly arms: readonly [number, number] | undefined
  readonly handRaised: boolean
  /** Places that tell whether she moves, px, and the torso they are judged by. */
  readonly marks: readonly Point[]
  readonly torso: number
}

/** A joint the model is less sure of than this is hidden or outside the frame. */
const SURE = 0.5
/** Crown above the ears, as a share of ears to shoulder joints; generous (figure drawing, from memory). */
const CROWN = 0.75
/**
 * Shoulder joint to shoulder joint across the picture, in torsos. Seen from front or back
 * 0.62 to 0.76, from the side up to 0.07 (51 rendered photos); between lies a half turn.
 */
const [OPEN, CLOSED] = [0.45, 0.25]
/** A raised hand is above the nose by this much, in torsos; a hand at the face is not meant. */
const RAISED = 0.3

/** Undefined when head, shoulders or hips are not seen: nobody who could be told anything. */
export function livePose(sight: Sight | undefined): LivePose | undefined {
  if (!sight) return undefined
  const { joints, width, height } = sight
  const [ear, shoulder, hip] = ['ear', 'shoulder', 'hip'].map((name) => middle(joints, name))
  if (!ear || !shoulder || !hip || !sure(joints, 'shoulder') || !sure(joints, 'hip'))
    return undefined
  const torso = hip.y - shoulder.y
  if (torso <= 0) return undefined
  const feet = ['heel', 'foot_index', 'ankle'].flatMap((name) => seen(joints, name))
  const lowest = feet.length > 0 ? Math.max(...feet.map((p) => p.y)) : height
  return {
    crown: (ear.y - CROWN * Math.max(0, shoulder.y - ear.y)) / height,
    foot: lowest / height,
    feetSeen: feet.length > 0 && lowest < height,
    across: (shoulder.x + hip.x) / 2 / width,
    turn: turnOf(joints, torso),
    arms: armsOf(joints),
    handRaised: handRaised(joints, torso),
    marks: [ear, shoulder, hip, middle(joints, 'ankle') ?? hip],
    torso,
  }
}

/** How far she moved between two frames, in torsos: the mark that moved most. */
export function movedBy(a: LivePose, b: LivePose): number {
  return Math.max(
    ...a.marks.map((p, i) => {
      const q = b.marks[i] ?? p
      return Math.hypot(p.x - q.x, p.y - q.y) / a.torso
    }),
  )
}

/** Left of the wearer lies right in the picture when she faces the camera. */
function turnOf(joints: Sight['joints'], torso: number): Turn {
  const [left, right] = [joints['left_shoulder'], joints['right_shoulder']]
  if (!left || !right) return 'between'
  const across = (left.at.x - right.at.x) / torso
  if (Math.abs(across) <= CLOSED) return 'side'
  if (Math.abs(across) < OPEN) return 'between'
  return across > 0 ? 'front' : 'back'
}

function armsOf(joints: Sight['joints']): readonly [number, number] | undefined {
  const angles = ['left', 'right'].flatMap((side) => {
    const [from, to] = [joints[`${side}_shoulder`], joints[`${side}_wrist`]]
    if (!from || !to || to.score < SURE) return []
    const out = Math.abs(to.at.x - from.at.x)
    return [(Math.atan2(out, to.at.y - from.at.y) * 180) / Math.PI]
  })
  const [a, b] = angles.sort((p, q) => p - q)
  return a === undefined || b === undefined ? undefined : [a, b]
}

function handRaised(joints: Sight['joints'], torso: number): boolean {
  const nose = joints['nose']
  if (!nose) return false
  return seen(joints, 'wrist').some((wrist) => wrist.y < nose.at.y - RAISED * torso)
}

const seen = (joints: Sight['joints'], name: string): Point[] =>
  [joints[`left_${name}`], joints[`right_${name}`]].flatMap((joint) =>
    joint && joint.score >= SURE ? [joint.at] : [],
  )
const sure = (joints: Sight['joints'], name: string): boolean => seen(joints, name).length > 0
