/**
 * What is said on every printed sheet and page of steps: tools that hurt, sleeves that catch,
 * and what these numbers are not. Common practice of any sewing room, no source.
 */
export const CAUTIONS: readonly string[] = [
  'Scissors, blades and pins: cut away from your hand and count the pins back.',
  'The iron burns cloth and skin. Try its heat on a scrap.',
  'A wide sleeve catches: keep it from flame, hob, turning machine and drill. Not for work near them.',
  'Not for children’s nightwear: loose sleeves and open flame have their own laws.',
  'These are sewing numbers, not medical ones. Nothing here measures health.',
  'Where you sew for others, local rules and licensed practice come first.',
]
