/**
 * Photos that give trouble, made byte by byte. JPEG after ITU-T T.81: grey everywhere, two bits a
 * block (no change of brightness, end of block), so that 100 megapixels are 400 kB. GIF after
 * GIF89a: every pixel a code of its own, the table cleared before it grows.
 */
const u16 = (value: number): number[] => [value >> 8, value & 255]
const segment = (marker: number, data: readonly number[]): number[] => [
  0xff,
  marker,
  ...u16(data.length + 2),
  ...data,
]
const letters = (text: string): number[] => [...text].map((c) => c.charCodeAt(0))
/** One code of one bit, 0, that stands for 0: no change for DC, end of block for AC. */
const ONE_CODE = [1, ...Array.from({ length: 15 }, () => 0), 0]
/** Marks CMYK in the Adobe way: no transform, inks turned round. */
const ADOBE = segment(0xee, [...letters('Adobe'), 0, 100, 0, 0, 0, 0, 0])

export function greyJpeg(width: number, height: number, parts: 1 | 4 = 1): Buffer {
  const ids = Array.from({ length: parts }, (_, i) => i + 1)
  const head = [
    0xff,
    0xd8,
    ...(parts === 4 ? ADOBE : segment(0xe0, [...letters('JFIF\0'), 1, 1, 0, 0, 1, 0, 1, 0, 0])),
    ...segment(0xdb, [0, ...Array.from({ length: 64 }, () => 1)]),
    ...segment(0xc0, [
      8,
      ...u16(height),
      ...u16(width),
      parts,
      ...ids.flatMap((id) => [id, 0x11, 0]),
    ]),
    ...segment(0xc4, [0x00, ...ONE_CODE]),
    ...segment(0xc4, [0x10, ...ONE_CODE]),
    ...segment(0xda, [parts, ...ids.flatMap((id) => [id, 0x00]), 0, 63, 0]),
  ]
  const blocks = Math.ceil(width / 8) * Math.ceil(height / 8) * parts
  return Buffer.concat([
    Buffer.from(head),
    Buffer.alloc(Math.ceil((blocks * 2) / 8)),
    Buffer.from([0xff, 0xd9]),
  ])
}

/** Two frames, dark and light, that change twice a second. */
export function movingGif(width: number, height: number): Buffer {
  const le = (value: number): number[] => [value & 255, value >> 8]
  const grey = Array.from({ length: 128 }, (_, i) => [2 * i, 2 * i, 2 * i]).flat()
  const frame = (shade: number): Buffer => {
    const [clear, end, perRun] = [128, 129, 100]
    const codes: number[] = []
    for (let i = 0; i < width * height; i += 1) {
      if (i % perRun === 0) codes.push(clear)
      codes.push(shade)
    }
    codes.push(end)
    const blocks: Buffer[] = []
    for (let at = 0; at < codes.length; at += 255) {
      const part = codes.slice(at, at + 255)
      blocks.push(Buffer.from([part.length, ...part]))
    }
    const control = [0x21, 0xf9, 4, 0, ...le(50), 0, 0]
    const image = [0x2c, ...le(0), ...le(0), ...le(width), ...le(height), 0, 7]
    return Buffer.concat([Buffer.from([...control, ...image]), ...blocks, Buffer.from([0])])
  }
  const loop = [0x21, 0xff, 11, ...letters('NETSCAPE2.0'), 3, 1, 0, 0, 0]
  const head = [...letters('GIF89a'), ...le(width), ...le(height), 0xf6, 0, 0, ...grey, ...loop]
  return Buffer.concat([Buffer.from(head), frame(20), frame(100), Buffer.from([0x3b])])
}

/** The header of a HEIC file (ISO/IEC 23008-12), and nothing a decoder could open. */
export const heicHeader = (): Buffer =>
  Buffer.concat([
    Buffer.from([0, 0, 0, 24]),
    Buffer.from('ftypheic\0\0\0\0mif1heic'),
    Buffer.alloc(4096),
  ])
