/** Parts of the body in words. */
import type { Zone } from './zones.ts'

export const ZONE_WORDS: Readonly<Record<Zone, string>> = {
  neck: 'neck',
  shoulder: 'shoulder',
  bust: 'bust',
  armhole: 'armhole',
  back: 'back',
  waist: 'waist and hip',
  sleeve: 'sleeve',
  whole: 'the whole garment',
}
