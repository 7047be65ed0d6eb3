/** What the finishes are called and how each is done, in order. */
import type { Mm } from '../units/length.ts'
import { says } from './pass.ts'

export const FINISH_NAMES = {
  plainSeam: 'plain seam, pressed open',
  frenchSeam: 'French seam',
  flatFelled: 'flat-felled seam',
  armholeSeam: 'armhole seam',
  cuffSeam: 'seam of a cuff',
  zip: 'seam with a zip',
  rolledEdge: 'narrow rolled edge',
  doubleFoldHem: 'double-fold hem',
  biasStrip: 'bias strip',
  facing: 'shaped facing',
  muslinSeam: 'muslin seam, left wide to let out',
  muslinEdge: 'muslin edge',
  muslinHem: 'muslin hem, left deep to let down',
  cutOnLine: 'cut on the line',
}

export const FINISH_PASSES = {
  plainSeam: (by: Mm) => [
    says`Right sides together, sew ${by} from the edge.`,
    says`Overcast each edge by itself.`,
    says`Press the seam open.`,
  ],
  frenchSeam: (first: Mm, trimmed: Mm, second: Mm) => [
    says`Wrong sides together, sew ${first} from the edge.`,
    says`Trim to ${trimmed} and press to one side.`,
    says`Right sides together, the first seam on the fold, sew ${second} from the fold.`,
    says`Press towards the back.`,
  ],
  flatFelled: (by: Mm, trimmed: Mm) => [
    says`Wrong sides together, sew ${by} from the edge.`,
    says`Trim the back layer to ${trimmed}.`,
    says`Fold the front layer in half over it and press flat.`,
    says`Topstitch along the fold.`,
  ],
  armholeSeam: (by: Mm, inside: Mm, trimmed: Mm) => [
    says`Sleeve and armhole right sides together, sew ${by} from the edge.`,
    says`Sew a second row ${inside} inside the first under the arm and trim to ${trimmed} there.`,
    says`Overcast both edges together and press into the sleeve.`,
  ],
  cuffSeam: (by: Mm, trimmed: Mm) => [
    says`Right sides together, sew ${by} from the edge.`,
    says`Trim to ${trimmed} and press into the cuff.`,
  ],
  zip: (row: Mm, by: Mm) => [
    says`Sew a row ${row} from the edge along the opening, so that it does not stretch.`,
    says`Sew the seam below the opening, ${by} from the edge.`,
    says`Press the allowance under along the opening and set the zip.`,
  ],
  rolledEdge: (first: Mm, deep: Mm) => [
    says`Sew ${first} from the edge, fold on that row to the wrong side and press.`,
    says`Sew close to the fold and trim the rest away beside the row.`,
    says`Fold once more, ${deep} deep, and sew on the second row.`,
  ],
  doubleFoldHem: (depth: Mm) => [
    says`Press the edge to the wrong side, ${depth} deep.`,
    says`Turn it again on the hem line, ${depth} deep, and press.`,
    says`Sew along the inner fold.`,
  ],
  biasStrip: (wide: Mm, longer: Mm, by: Mm) => [
    says`Cut a strip on the true bias, ${wide} wide and ${longer} longer than the edge.`,
    says`Right sides together, sew ${by} from the edge. Clip where it is hollow.`,
    says`Turn the strip to the wrong side, its own edge under by ${by}, and sew it down.`,
  ],
  facing: (by: Mm, one: Mm, other: Mm) => [
    says`Right sides together, sew ${by} from the edge.`,
    says`Trim one layer to ${one} and the other to ${other}. Clip where it is hollow.`,
    says`Sew the allowance to the facing close to the seam, turn and press.`,
  ],
  muslinSeam: [says`Sew on the marked line with the longest stitch.`, says`Press open.`],
  muslinEdge: [
    says`Sew a row on the marked line, so that it keeps its length. Leave the edge flat.`,
  ],
  muslinHem: (by: Mm) => [says`Leave it flat, or turn up ${by} on the marked line and tack.`],
}
