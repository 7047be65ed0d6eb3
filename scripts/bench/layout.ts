/**
 * Layouts: `bench:layout -- DIR` packs the published strip-packing instances of a folder and tells
 * how dense against the best published density; `bench:layout -- own` lays out our own garments.
 * Options: --seconds S a layout (of one core's time, so that a busy machine tells the same; the
 * time that passed is printed beside it), --only NAME,NAME, --seed N, --n N layouts of our own.
 * The last line is RESULT and one JSON object. It never fails on a figure.
 */
import { published } from './layout/published.ts'

const [what, ...rest] = process.argv.slice(2)
function option(name: string): string | undefined {
  const at = rest.indexOf(`--${name}`)
  return at < 0 ? undefined : rest[at + 1]
}
const number = (name: string, otherwise: number): number => {
  const given = Number(option(name) ?? otherwise)
  if (!Number.isFinite(given)) throw new Error(`--${name} ${option(name)} is no number`)
  return given
}

if (!what) console.log('Say what to lay out: a folder of instances, or own.')
else
  published({
    folder: what,
    seconds: number('seconds', 60),
    only: option('only')?.split(',') ?? [],
    seed: number('seed', 1),
  })
