/** Words of the trade as the page uses them, each in a sentence or two. Common practice, no source. */
import type { WordId } from './glossary.ts'

export interface Word {
  readonly word: string
  readonly says: string
}

export const GLOSSARY_WORDS: Readonly<Record<WordId, Word>> = {
  agreed: {
    word: 'agreed',
    says: 'Two readings of the tape that lie near enough together. Only agreed numbers are drawn from.',
  },
  allowance: {
    word: 'allowance',
    says: 'Cloth outside the seam line. The seam is drawn first, the allowance is added to it.',
  },
  balance: {
    word: 'balance',
    says: 'How much longer the front is than the back, over bust tip and shoulder blade.',
  },
  bias: {
    word: 'bias',
    says: 'Slantwise to the threads, at half a right angle. Cloth stretches most along it.',
  },
  block: { word: 'block', says: 'A plain draft that fits closely. Garments are made from it.' },
  bustTip: {
    word: 'bust tip',
    says: 'The point a bust dart aims at; in the tape book, the apex. The dart itself ends a little before it.',
  },
  calico: {
    word: 'calico',
    says: 'Plain unbleached cotton, woven as firm as the cloth to come. Muslins are sewn of it.',
  },
  cap: {
    word: 'cap',
    says: 'The curved top of a sleeve, from underarm over the shoulder to underarm.',
  },
  complaint: {
    word: 'complaint',
    says: 'What a muslin does that it should not: a fold, a pull, a gape. The cloth complains, never the body.',
  },
  dart: {
    word: 'dart',
    says: 'A wedge of cloth sewn away to a point, so that flat cloth goes over a round.',
  },
  ease: {
    word: 'ease',
    says: 'What a garment measures more than the body, for moving and breathing.',
  },
  fold: {
    word: 'fold',
    says: 'The edge of cloth laid double. A piece on the fold comes out whole.',
  },
  grain: {
    word: 'grain',
    says: 'The direction of the long threads. The arrow on a piece lies along it.',
  },
  muslin: {
    word: 'muslin',
    says: 'A trial of the garment in plain cloth, sewn with long stitches to be opened again.',
  },
  nape: {
    word: 'nape',
    says: 'The bone at the back of the neck that stands out when the head bends forward.',
  },
  notch: {
    word: 'notch',
    says: 'A small mark on an edge. One is front, two are back; equal notches meet.',
  },
  overarm: { word: 'overarm', says: 'The line from the side neck over the shoulder down the arm.' },
  plumb: { word: 'plumb', says: 'Hanging straight down, as a weight on a thread does.' },
  proof: {
    word: 'proof',
    says: 'What the page checks on a draft: that seams match and that it can be got into.',
  },
  reading: { word: 'reading', says: 'One number off the tape. Each length is read twice.' },
  round: { word: 'round', says: 'One muslin: numbers, draft, what was seen, what was decided.' },
  scye: { word: 'scye', says: 'An old word for the armhole.' },
  sideNeck: {
    word: 'side neck',
    says: 'Where the neck turns into the shoulder, under the lobe of the ear.',
  },
  toile: { word: 'toile', says: 'The same as a muslin.' },
  truing: {
    word: 'truing',
    says: 'Drawing a line smooth and square again after a change, and holding seams that meet against each other.',
  },
  walking: {
    word: 'walking',
    says: 'Laying one seam along the other, a bit at a time, to see that both are equally long.',
  },
  watch: {
    word: 'watch',
    says: 'What is left of a pinned amount. It is looked at on the next muslin before it is changed.',
  },
}
