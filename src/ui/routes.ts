/** Which page lies at which hash. The paths are read back by `placeAt` in tape/places.ts. */
import type { RouteDefinition } from 'svelte-spa-router'
import { wrap } from 'svelte-spa-router/wrap'
import CutPlace from './cut/CutPlace.svelte'
import ProjectorPage from './cut/ProjectorPage.svelte'
import DraftPlace from './draft/DraftPlace.svelte'
import FitPlace from './fitting/FitPlace.svelte'
import MeasurePlace from './measure/MeasurePlace.svelte'
import RailPlace from './rail/RailPlace.svelte'
import ComparePlace from './rounds/ComparePlace.svelte'
import NoGarment from './tape/NoGarment.svelte'
import NothingHere from './tape/NothingHere.svelte'
import type { PlaceId } from './tape/places.ts'

/** Props of a page that belongs to one garment. */
export interface GarmentRoute {
  params: { readonly garment: string }
}

/** Pages that take the whole screen: no tape lies beside them and no digit walks it. */
export const takesWholeScreen = (path: string): boolean => /^\/g\/[^/]+\/cut\/throw\/?$/.test(path)

const noGarment = (place: PlaceId) => wrap({ component: NoGarment, props: { place } })

export const ROUTES: RouteDefinition = {
  '/': RailPlace,
  '/measure': MeasurePlace,
  '/g/:garment/draft': DraftPlace,
  '/g/:garment/fit': FitPlace,
  '/g/:garment/compare': ComparePlace,
  '/g/:garment/cut': CutPlace,
  '/g/:garment/cut/throw': ProjectorPage,
  '/draft': noGarment('draft'),
  '/fit': noGarment('fit'),
  '/compare': noGarment('compare'),
  '/cut': noGarment('cut'),
  '*': NothingHere,
}
