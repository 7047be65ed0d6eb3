/**
 * The bad days of a device, in a real Chromium through the built app: what survives, what is lost,
 * what the page says. Needs `npm run build`. `--only killed,photo` runs the cases whose name holds
 * one of these, `--kills N` and `--backups N` set how often.
 */
import { parseArgs } from 'node:util'
import { ALLOWED, DENIED, denied, rotated, unplugged } from './faults/camera.ts'
import { mutatedBackups } from './faults/backups.ts'
import type { Outcome } from './faults/fault.ts'
import { host } from './faults/host.ts'
import { killedDuringSave } from './faults/killed.ts'
import { closedWhileAdding, killedUnderPassphrase, wrongPassphrase } from './faults/passphrase.ts'
import { BAD_PHOTOS, badPhoto } from './faults/photos.ts'
import { FLAGS, readsWithout, spoiltModel } from './faults/reading.ts'
import {
  clockBack,
  dataForbidden,
  forbidData,
  indexedDbAbsent,
  indexedDbThrows,
  onFresh,
  quotaFull,
} from './faults/stores.ts'
import { twoWindows } from './faults/two-windows.ts'

const { values } = parseArgs({
  options: {
    only: { type: 'string' },
    kills: { type: 'string', default: '100' },
    backups: { type: 'string', default: '500' },
  },
})
const server = await host()
const { origin } = server
const flagged = Object.keys(FLAGS) as (keyof typeof FLAGS)[]

const CASES: Readonly<Record<string, () => Promise<Outcome>>> = {
  'killed during save': () => killedDuringSave(origin, Number(values.kills)),
  'killed while photos are closed or opened': () =>
    killedUnderPassphrase(origin, Math.ceil(Number(values.kills) / 5)),
  'wrong passphrase': () => wrongPassphrase(origin),
  'passphrase set while another tab adds photos': () =>
    closedWhileAdding(origin, Math.ceil(Number(values.kills) / 10)),
  'quota full': () => onFresh(origin, quotaFull),
  'IndexedDB throws': () => onFresh(origin, indexedDbThrows),
  'IndexedDB absent': () => onFresh(origin, indexedDbAbsent),
  'data forbidden by the browser': () => onFresh(origin, dataForbidden, [], forbidData),
  'two tabs writing': () => onFresh(origin, twoWindows('English')),
  'two tabs writing, one of them German': () => onFresh(origin, twoWindows('German')),
  'clock set back': () => onFresh(origin, clockBack),
  ...Object.fromEntries(
    flagged.map((what) => [what, () => onFresh(origin, readsWithout(what), FLAGS[what])]),
  ),
  'model file truncated or altered': () => onFresh(origin, spoiltModel(server)),
  'camera denied': () => onFresh(origin, denied, DENIED),
  'camera unplugged': () => onFresh(origin, unplugged, ALLOWED),
  'phone rotated': () => onFresh(origin, rotated, ALLOWED),
  ...Object.fromEntries(
    Object.keys(BAD_PHOTOS).map((which) => [which, () => onFresh(origin, badPhoto(which))]),
  ),
  'mutated backups': () => onFresh(origin, mutatedBackups(Number(values.backups))),
}

const wanted = values.only?.split(',')
const result: Record<string, Outcome> = {}
try {
  for (const [name, run] of Object.entries(CASES)) {
    if (wanted && !wanted.some((part) => name.includes(part))) continue
    const outcome = await run()
    result[name] = outcome
    console.log(
      `${name}: ${outcome.survived} of ${outcome.tries} survived, ${outcome.lost} lost. ${outcome.sentence}`,
    )
  }
} finally {
  server.close()
}
console.log(`RESULT ${JSON.stringify(result)}`)
