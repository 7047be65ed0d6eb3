/** Directions, sides, movements and the words that relate one place to another. */
import type { Concepts } from '../concept.ts'

export const DIRECTIONS = {
  across: {
    kind: 'direction',
    said: 'level, across',
    words:
      'across, horizontal, horizontally, crosswise, crossways, cross, sideways, side to side, from side to side, left to right, straight across, going across, widthwise, widthways, level fold, level, transverse, athwart, east to west',
  },
  upright: {
    kind: 'direction',
    said: 'upright',
    words:
      'vertical, vertically, lengthwise, lengthways, up and down, up down, upright, perpendicular, from up to down, top to bottom fold, longitudinal, north to south, straight down, long folds, running down',
  },
  slant: {
    kind: 'direction',
    said: 'slantwise',
    words:
      'diagonal, diagonally, diagonals, slantwise, slanting, slanted, slant, oblique, obliquely, at an angle, angled, v shape, v shaped, upside down v, bias line, crossing down, catty corner, kitty corner, like a v, radiating, radiate, radial, fan, fan out, starburst, sunburst',
  },
  allRound: {
    kind: 'direction',
    said: 'all round',
    words:
      'all round, all around, right round, right around, all the way round, all the way around, round and round, front and back, front side and back, everywhere around, on every side, full circle, way round, way around, the whole way round, front and back alike, back and front',
  },
  forward: {
    kind: 'direction',
    said: 'forward',
    words:
      'forward, to front, toward front, front ward, toward my front, forwards, foward, forwards of, to the front, frontwards',
  },
  backward: {
    kind: 'direction',
    said: 'backward',
    words:
      'backward, to back, toward back, to the back, rearward, backwards, to behind, to rear, off to back',
  },
  up: { kind: 'direction', said: 'up', words: 'up, upstairs' },
  down: { kind: 'direction', said: 'down', words: 'down, doon' },
  outward: {
    kind: 'direction',
    said: 'outward',
    words:
      'out, outward, outwards, outer, outside, further out, far out, to side, to sides, out to sides, toward side, off to side, away from centre, toward armpit',
  },
  inward: {
    kind: 'direction',
    said: 'inward',
    words:
      'inward, inwards, inside, inner, to middle, in to middle, toward middle, to centre, toward centre, in the middle, further in, far in',
  },
} as const satisfies Concepts

export const SIDES = {
  oneSide: {
    kind: 'side',
    said: 'on one side',
    words:
      'one side, one shoulder, left, right side, right shoulder, right one, my right, left side, only one, one only, left only, right only, one arm, other side, other one, on one, the other, single side, one half, than the other, than other, different from other',
  },
  bothSides: {
    kind: 'side',
    said: 'on both sides',
    words:
      'both sides, both, each, each side, either side, left and right, two sides, left and right alike',
  },
} as const satisfies Concepts

export const MOVEMENTS = {
  reach: {
    kind: 'movement',
    said: 'when reaching forward',
    words:
      'reach, reaches, reaching, reach forward, stretch forward, reach out, hug, hugs, hugging, embrace, cuddle, drive, driving, steering wheel, steering, wheel, type, typing, keyboard, push pram, push chair, pushing, push, fold my arms, cross my arms, arms crossed, arms forward, arm forward, bring arms forward, arms in front, arms together, lean over desk, bike, cycling, cycle, bicycle, handlebars, row, hold my baby, carry child, pick up, pick something up, clap, play piano, move arms forward, arms come forward, bend forward with arms',
  },
  armsUp: {
    kind: 'movement',
    said: 'when lifting the arms',
    words:
      'lift arm, lift my arm, lift arms, lifting arm, lifting arms, arm lifted, arms lifted, raise arm, raise arms, raise my arm, raising arm, raise hand, raise my hand, raise hands, lift hand, hand lifted, hand not lifting, arm up, arms up, hands up, hand up, put arm up, put my arms up, put hand up, overhead, over head, over my head, above head, shelf, top shelf, high shelf, wave, waving, wave hand, do my hair, ceiling, bus strap, hang washing, hanging washing, hang out washing, washing line, reach up, reach high, arms go up, arm go up, reach the shelf, stretch up, arm raised, arms raised, arms in air, hands in air, hands in the air, hail a taxi, hailing, volleyball, yoga, upward reach, lift my hands, lift up my arm, lift them, no lift, arm will not go up, arm not go up, arms pinned, comb my hair, brush my hair, tie my hair, dancing, dance, hold rail, arm lift, shampoo, cupboard, cabinet, upstretched, raised arm, reaching up, t rex, reach for shelf, throw a ball, basketball, reach top, change a lightbulb, light bulb, curtain hanging, with arm up',
  },
  bendElbow: {
    kind: 'movement',
    said: 'when the elbow bends',
    words:
      'bend arm, bend my arm, bending arm, bent arm, bend elbow, bend my elbow, elbow bends, arm bent, bending elbow, drink, drinking, eat with, phone, text, texting, fork, touch my ear, touching my ear, cup to mouth, arm bends, flex, bend it, telephone, brush my teeth, toothbrush, lift a cup, bottle, scratch my nose, hand to mouth, hand to my mouth, spoon, makeup, flexing',
  },
  sit: {
    kind: 'movement',
    said: 'when sitting',
    words: 'sit, sits, sitting, sit down, seated, chair, sat, driving seat',
  },
  bendOver: {
    kind: 'movement',
    said: 'when bending over',
    words:
      'bend over, bending over, lean forward, lean over, leaning forward, bend down, bow, stoop down, bending down, pick up from floor',
  },
  walk: { kind: 'movement', said: 'when walking', words: 'walk, walking, walks, step, stride' },
  breathe: {
    kind: 'movement',
    said: 'when breathing',
    words: 'breathe, breath, breathing, deep breath, inhale',
  },
  armsDown: {
    kind: 'movement',
    said: 'with the arms hanging',
    words:
      'arms down, arm down, arm hangs, arms hang, arm hanging, arms hanging, at rest, arms at sides, arms at my sides, arm at rest, hanging arm, when arm is down, arms relaxed, arms are down, put my arms down, standing still, arm is down, arms rest',
  },
  shoulderBack: {
    kind: 'movement',
    said: 'with the arms drawn back',
    words:
      'arms back, put my arms back, pull shoulders back, shoulders back, arms going back, hands behind, throw shoulders back, stretch arms back, arms behind me',
  },
  meal: {
    kind: 'movement',
    said: 'after a meal',
    words:
      'lunch, dinner, meal, after eating, after i eat, eaten, full stomach, supper, tea time, eat, eating',
  },
  hung: {
    kind: 'movement',
    said: 'after hanging',
    words:
      'overnight, after hanging, hung for a day, hanging up for a day, left on hanger, on the hanger, hanger',
  },
  washed: {
    kind: 'movement',
    said: 'after washing',
    words: 'wash, washed, washing machine, in wash, laundry, laundered, dried, tumble',
  },
  wornOn: {
    kind: 'movement',
    said: 'while it is worn',
    words:
      'all day, keep, keeps, constantly, always, by lunchtime, every minute, during day, all the time, continually, again and again, every few minutes',
  },
} as const satisfies Concepts

export const RELATIONS = {
  from: {
    kind: 'relation',
    said: 'from',
    words: 'from, starting at, starts at, start at, begins at, start, starts',
  },
  toPlace: {
    kind: 'relation',
    said: 'towards',
    words: 'to, toward, up to, down to, aims at, ending at, as far as',
  },
  above: {
    kind: 'relation',
    said: 'above',
    words: 'above, over top of, on top of, atop, higher than, upper, top',
  },
  below: {
    kind: 'relation',
    said: 'below',
    words:
      'below, under, underneath, beneath, lower than, right under, just under, directly under, immediately below',
  },
  between: {
    kind: 'relation',
    said: 'between',
    words:
      'between, in between, from scye to scye, from armhole to armhole, from arm to arm, armhole to armhole, arm to arm, scye to scye',
  },
  beside: {
    kind: 'relation',
    said: 'beside',
    words:
      'beside, next to, near, by, close by, alongside, along, around, at either side of, nearby, adjacent',
  },
  over: { kind: 'relation', said: 'over', words: 'over, on' },
  behindOf: {
    kind: 'relation',
    said: 'behind',
    words:
      'behind shoulder, behind the bone, behind my shoulder, behind bone, back of shoulder, behind top of shoulder, behind top of arm, behind my arm, behind arm, behind both arms',
  },
  aheadOf: {
    kind: 'relation',
    said: 'in front of',
    words:
      'in front of, ahead of, in front of bone, in front of shoulder, in front of arm, front of shoulder, front of arm, front of armpit, front of my armpit, front armpit, in front of armpit',
  },
  want: {
    kind: 'relation',
    said: 'should be',
    words:
      'need, needs, needed, needing, want, wants, wanting, should, should be, must, must be, wish, supposed, ought, would like, had to be',
  },
  fine: {
    kind: 'relation',
    said: 'is right',
    words:
      'fine, perfect, perfectly, ok, okay, good, great, correct, fits well, fits, fit, fitted, sound, all right, alright, nice',
  },
  borrowed: {
    kind: 'relation',
    said: 'like another one’s clothes',
    words:
      'borrowed, dad, dads, husband, boyfriend, someone else, father, brother, someone bigger, linebacker, american football, hand me down, big brother, footballer',
  },
} as const satisfies Concepts
