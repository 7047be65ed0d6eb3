/**
 * Particles of German verbs: they stand before them, or far behind. Letters evened, and
 * their short forms brought to one before (tokens).
 */
import type {
  GOES_ON as EnglishGoesOn,
  INFIXES as EnglishInfixes,
  PARTICLES as EnglishParticles,
  TWOFOLD as EnglishTwofold,
} from './particles.words.ts'

export const PARTICLES: typeof EnglishParticles = (
  'auseinander zusammen aneinander aufeinander hinunter heraus hinauf hinein herum hervor ' +
  'herunter runter herauf rauf raus herein rein heran vorbei zuruck ruber hoch weg rum ran los durch uber vor auf aus ein ab an um zu nach'
).split(' ')
export const INFIXES: typeof EnglishInfixes = ['ge', 'zu']
export const TWOFOLD: typeof EnglishTwofold = new Set(
  'ab an auf aus ein vor zu um uber durch nach'.split(' '),
)
export const GOES_ON: typeof EnglishGoesOn = new Set(
  (
    'und oder aber sondern wenn weil sobald als wie dass damit obwohl wahrend so da bis bei beim ' +
    'am im an in ins vom von auf uber unter vor hinter neben zwischen nach zu zum zur wegen mit ' +
    'ohne trotz statt gegen um seit hinten vorne vorn oben unten nur dort hier jetzt immer ' +
    'standig sehr ganz richtig total'
  ).split(' '),
)
