/**
 * A small reader of PDF files for the tests, written from ISO 32000-1 and sharing nothing with
 * the writer: objects by their own markers, streams inflated, operators walked one by one.
 * It knows only what a plain drawing needs and throws on anything else.
 */
import { inflateSync } from 'node:zlib'

export interface Spot {
  readonly x: number
  readonly y: number
}
export interface Drawn {
  /** Chains of points in PDF points, from the lower-left corner; curves cut into short chords. */
  readonly runs: readonly (readonly Spot[])[]
  readonly stroked: boolean
  readonly lineWidth: number
  readonly dash: string
  /** x, y, width, height of the rectangle it came from, if it came from one. */
  readonly rectangle?: readonly [number, number, number, number]
  readonly clip?: readonly [number, number, number, number]
  /** Name of the layer it is drawn on; absent where it always shows. */
  readonly layer?: string
}
export interface ReadPage {
  readonly mediaBox: readonly number[]
  readonly drawn: readonly Drawn[]
  /** Every shown text, in order, with where its foot lies. */
  readonly texts: readonly ReadText[]
}
export interface ReadText {
  readonly text: string
  readonly at: Spot
  readonly size: number
  readonly layer?: string
}
export interface ReadPdf {
  readonly pages: readonly ReadPage[]
  readonly catalog: string
  readonly info: string
}

const CHORDS = 64

export function readPdf(bytes: Uint8Array): ReadPdf {
  const file = Buffer.from(bytes).toString('latin1')
  const objects = new Map<string, string>()
  for (const m of file.matchAll(/(?:^|[\r\n])(\d+) 0 obj\s([\s\S]*?)endobj/g))
    objects.set(m[1] ?? '', m[2] ?? '')
  const object = (ref: string): string => {
    const found = objects.get(ref)
    if (found === undefined) throw new Error(`pdf: no object ${ref}`)
    return found
  }
  const stream = (body: string): string => {
    const begin = body.indexOf('stream')
    const length = Number(body.match(/\/Length (\d+)/)?.[1])
    const from = begin + 'stream'.length + (body[begin + 6] === '\r' ? 2 : 1)
    const raw = Buffer.from(body.slice(from, from + length), 'latin1')
    return (body.includes('/FlateDecode') ? inflateSync(raw) : raw).toString('latin1')
  }
  const trailer = file.slice(file.lastIndexOf('trailer'))
  const named = (text: string, key: string): string => {
    const ref = text.match(new RegExp(`/${key} \\[? ?(\\d+) 0 R`))?.[1]
    if (ref === undefined) throw new Error(`pdf: no ${key} in ${text}`)
    return ref
  }
  const catalog = object(named(trailer, 'Root'))
  const tree = object(named(catalog, 'Pages'))
  const kids = [...(tree.match(/\/Kids \[([^\]]*)\]/)?.[1] ?? '').matchAll(/(\d+) 0 R/g)]
  const letters = lettersOf([...objects.values()], stream)
  const pages = kids.map((kid) => {
    const page = object(kid[1] ?? '')
    const box = page.match(/\/MediaBox \[([^\]]*)\]/)?.[1] ?? ''
    const walked = walk(stream(object(named(page, 'Contents'))), letters, layersOf(page, object))
    return { mediaBox: box.trim().split(/\s+/).map(Number), ...walked }
  })
  return { pages, catalog, info: object(named(trailer, 'Info')) }
}

/** Key → name of the layer, from the page's properties (ISO 32000-1, 8.11.2 and 14.6.2). */
function layersOf(page: string, object: (ref: string) => string): ReadonlyMap<string, string> {
  const listed = page.match(/\/Properties <<([^>]*)>>/)?.[1] ?? ''
  return new Map(
    [...listed.matchAll(/\/(\w+) (\d+) 0 R/g)].map(([, key = '', ref = '']) => {
      const group = object(ref)
      const hex = group.match(/\/Name <FEFF([0-9A-Fa-f]*)>/)?.[1]
      if (!group.includes('/Type /OCG') || hex === undefined)
        throw new Error(`pdf: ${key} is no layer: ${group}`)
      return [key, Buffer.from(hex, 'hex').swap16().toString('utf16le')]
    }),
  )
}

/** Code → letters, from the ToUnicode map (ISO 32000-1, 9.10.3). */
function lettersOf(bodies: readonly string[], stream: (body: string) => string) {
  const letters = new Map<string, string>()
  for (const body of bodies) {
    if (!body.includes('stream') || body.includes('/FontFile')) continue
    const text = stream(body)
    if (!text.includes('begincmap')) continue
    for (const m of text.matchAll(/<([0-9A-Fa-f]{4})> <([0-9A-Fa-f]+)>/g)) {
      const code = (m[1] ?? '').toUpperCase()
      letters.set(
        code,
        Buffer.from(m[2] ?? '', 'hex')
          .swap16()
          .toString('utf16le'),
      )
    }
  }
  return letters
}

type Four = [number, number, number, number]
interface State {
  lineWidth: number
  dash: string
  clip?: Four
}

function walk(
  content: string,
  letters: ReadonlyMap<string, string>,
  layers: ReadonlyMap<string, string>,
): Omit<ReadPage, 'mediaBox'> {
  const tokens = content.match(/\[[^\]]*\]|<[0-9A-Fa-f]*>|\/[^\s/[\]<>()]+|[^\s/[\]<>()]+/g) ?? []
  const drawn: Drawn[] = []
  const texts: ReadText[] = []
  let layer: string | undefined
  let state: State = { lineWidth: 1, dash: '[] 0' }
  const kept: State[] = []
  let args: string[] = []
  let runs: Spot[][] = []
  let rectangle: Four | undefined
  let [size, foot] = [0, { x: 0, y: 0 }]
  const n = (i: number): number => {
    const value = Number(args[i])
    if (!Number.isFinite(value))
      throw new Error(`pdf: ${args[i]} is no number in ${args.join(' ')}`)
    return value
  }
  const paint = (stroked: boolean): void => {
    const { lineWidth, dash, clip } = state
    drawn.push({
      runs,
      stroked,
      lineWidth,
      dash,
      ...(rectangle ? { rectangle } : {}),
      ...(clip ? { clip } : {}),
      ...(layer === undefined ? {} : { layer }),
    })
    runs = []
    rectangle = undefined
  }
  for (const token of tokens) {
    if (/^[[</]/.test(token) || /^[-+]?[\d.]+$/.test(token)) {
      args.push(token)
      continue
    }
    switch (token) {
      case 'q':
        kept.push({ ...state })
        break
      case 'Q':
        state = kept.pop() ?? state
        break
      case 'w':
        state.lineWidth = n(0)
        break
      case 'd':
        state.dash = args.join(' ')
        break
      case 'm':
        runs.push([{ x: n(0), y: n(1) }])
        break
      case 'l':
        runs.at(-1)?.push({ x: n(0), y: n(1) })
        break
      case 'c': {
        const run = runs.at(-1)
        const from = run?.at(-1)
        if (!run || !from) throw new Error('pdf: a curve without a beginning')
        for (let i = 1; i <= CHORDS; i++) {
          const [t, u] = [i / CHORDS, 1 - i / CHORDS]
          const mix = (a: number, b: number, c: number, d: number): number =>
            u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d
          run.push({ x: mix(from.x, n(0), n(2), n(4)), y: mix(from.y, n(1), n(3), n(5)) })
        }
        break
      }
      case 're':
        rectangle = [n(0), n(1), n(2), n(3)]
        break
      case 'W':
        if (rectangle) state.clip = rectangle
        break
      case 'n':
        runs = []
        rectangle = undefined
        break
      case 'S':
        paint(true)
        break
      case 'f':
        paint(false)
        break
      case 'Tf':
        size = n(1)
        break
      case 'Tm':
        foot = { x: n(4), y: n(5) }
        break
      case 'Tj': {
        const codes = (args[0] ?? '').match(/[0-9A-Fa-f]{4}/g) ?? []
        const text = codes.map((code) => letters.get(code.toUpperCase()) ?? '\ufffd').join('')
        texts.push({ text, at: foot, size, ...(layer === undefined ? {} : { layer }) })
        break
      }
      case 'BDC': {
        const [tag, key = ''] = args
        layer = layers.get(key.slice(1))
        if (tag !== '/OC' || layer === undefined) throw new Error(`pdf: no layer ${key}`)
        break
      }
      case 'EMC':
        layer = undefined
        break
      case 'G':
      case 'g':
      case 'J':
      case 'j':
      case 'BT':
      case 'ET':
        break
      default:
        throw new Error(`pdf: operator ${token} is not known to this reader`)
    }
    args = []
  }
  return { drawn, texts }
}
