/** What she buys for a layout, as the screen and the paper say it. */
import { amountToBuy, amountWords, type Amount, type SoldBy } from '../../../layout/amount.ts'
import { clothOf, type ClothWishes } from '../../../layout/cloth-wishes.ts'
import type { UnitChoice } from '../../../units/format.ts'
import { inches, mm, type Mm } from '../../../units/length.ts'
import { decimals } from '../../../units/number.ts'

export const soldBy = (w: ClothWishes, units: UnitChoice): SoldBy =>
  w.soldBy ?? (units.unit === 'cm' ? 'metre' : 'yard')
const UNIT = { metre: mm(1000), yard: inches(36) } as const

export const amountOf = (length: number, w: ClothWishes, width: Mm, by: SoldBy): Amount =>
  amountToBuy(mm(length), clothOf(w, width), by, w.spare)

/** "1.7 m, 1⅞ yd": both, each rounded up by itself. */
export const bothWords = (length: number, w: ClothWishes, width: Mm): Record<SoldBy, string> => {
  const words = (by: SoldBy) => amountWords(amountOf(length, w, width, by).buy, by)
  return { metre: words('metre'), yard: words('yard') }
}
/** The price of what is bought, with two decimals and no money's name. */
export const priceWords = (amount: Amount, price: number): string =>
  decimals((amount.buy / UNIT[amount.soldBy]) * price, 2)
