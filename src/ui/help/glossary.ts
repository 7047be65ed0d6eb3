/** The words of the trade in the order of the alphabet, each page in that of its language. */
import { LANGUAGE } from '../language.words.ts'
import { GLOSSARY_WORDS } from './glossary.words.ts'

export const WORD_IDS = [
  'agreed',
  'allowance',
  'balance',
  'bias',
  'block',
  'bustTip',
  'calico',
  'cap',
  'complaint',
  'dart',
  'ease',
  'fold',
  'grain',
  'muslin',
  'nape',
  'notch',
  'overarm',
  'plumb',
  'proof',
  'reading',
  'round',
  'scye',
  'sideNeck',
  'toile',
  'truing',
  'walking',
  'watch',
] as const
export type WordId = (typeof WORD_IDS)[number]

export const GLOSSARY = WORD_IDS.map((id) => ({ id, ...GLOSSARY_WORDS[id] })).sort((a, b) =>
  a.word.localeCompare(b.word, LANGUAGE),
)
