/**
 * Layouts: `bench:layout -- DIR` packs the published strip-packing instances of a folder and tells
 * how dense against the best published density; `bench:layout -- own` lays out our own garments.
 * Options: --seconds S a layout (of one core's time, so that a busy machine tells the same; the
 * time that passed is printed beside it), --only NAME,NAME, --seed N; of our own --n N layouts after
 * the first --from K of the draw (so that a long run can be made in parts), --again N of them packed anew for --longer times as long.
 * The last line is RESULT and one JSON object. It never fails on a figure.
 */
import { own } from './layout/own.ts'
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
else if (what === 'own')
  own({
    n: number('n', 200),
    from: number('from', 0),
    seconds: number('seconds', 10),
    again: number('again', 10),
    longer: number('longer', 90),
    seed: number('seed', 1),
  })
else
  published({
    folder: what,
    seconds: number('seconds', 60),
    only: option('only')?.split(',') ?? [],
    seed: number('seed', 1),
  })
