/** Which page lies at which hash. The paths are read back by `placeAt` in tape/places.ts. */
import type { RouteDefinition } from 'svelte-spa-router'
import { wrap } from 'svelte-spa-router/wrap'
import RailPlace from './rail/RailPlace.svelte'
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

/** Every place but the rail comes in a piece of its own, so that the first page is small. */
export const ROUTES: RouteDefinition = {
  '/': RailPlace,
  '/measure': wrap({ asyncComponent: () => import('./measure/MeasurePlace.svelte') }),
  '/words': wrap({ asyncComponent: () => import('./help/HelpPlace.svelte') }),
  '/bring': wrap({ asyncComponent: () => import('./handover/BringPlace.svelte') }),
  '/g/:garment/draft': wrap({ asyncComponent: () => import('./draft/DraftPlace.svelte') }),
  '/g/:garment/fit': wrap({ asyncComponent: () => import('./fitting/FitPlace.svelte') }),
  '/g/:garment/compare': wrap({ asyncComponent: () => import('./rounds/ComparePlace.svelte') }),
  '/g/:garment/cut': wrap({ asyncComponent: () => import('./cut/CutPlace.svelte') }),
  '/g/:garment/cut/cloth': wrap({ asyncComponent: () => import('./cut/cloth/ClothPlace.svelte') }),
  '/g/:garment/cut/plan': wrap({ asyncComponent: () => import('./cut/plan/PlanPlace.svelte') }),
  '/g/:garment/cut/throw': wrap({ asyncComponent: () => import('./cut/ProjectorPage.svelte') }),
  '/draft': noGarment('draft'),
  '/fit': noGarment('fit'),
  '/compare': noGarment('compare'),
  '/cut': noGarment('cut'),
  '*': NothingHere,
}
