/** What a garment goes by: the name she gave it, else what it is, in the language of the page. */
import { GARMENTS } from '../draft/garments.ts'
import { NO_NAME, type HungGarment } from './schema/garment.ts'

type Named = Pick<HungGarment, 'garment' | 'name'>

export const garmentName = ({ garment, name }: Named): string =>
  name === NO_NAME ? GARMENTS[garment].name : name

/** `typed` as it is kept: what it goes by anyhow is no name of hers. */
export const nameToKeep = (garment: HungGarment['garment'], typed: string): string =>
  typed === GARMENTS[garment].name ? NO_NAME : typed
