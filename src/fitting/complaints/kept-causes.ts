/**
 * The cause a correction was made for, or a muslin was settled by, by its id. Rounds of the first
 * two complaints kept a name, and muslins after them the English sentence of the cause: both are
 * still read, whatever the sentence says now and in which language.
 */
import type { Because } from '../correction.ts'
import { causeId, type ComplaintId } from './complaint.ts'

export type KeptCause = Pick<Because, 'complaint' | 'cause'>

/* eslint-disable words/apart -- keys of kept rounds */
const KEPT_AS: Readonly<Record<string, string>> = {
  'B8 bust shaping': 'B8.1',
  'B8 overarm slope': 'B8.4',
  'B8 stretched edge': 'B8.5',
  'W1 short all round': 'W1.1',
}
/* eslint-enable words/apart */

/** "B8.1"; what names no cause ("unsettled") comes back as it was kept. */
export function keptCause({ complaint, cause }: KeptCause): string {
  const sentence = SENTENCES[complaint].split('-').indexOf(sumOf(cause))
  return sentence < 0
    ? (KEPT_AS[`${complaint} ${cause}`] ?? cause)
    : causeId(complaint, sentence + 1)
}

/** FNV-1a of 32 bits, folded to 16: enough to tell the few causes of a complaint apart. */
function sumOf(text: string): string {
  let sum = 0x811c9dc5
  for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193) >>> 0
  return ((sum >>> 16) ^ (sum & 0xffff)).toString(16).padStart(4, '0')
}

/** The sentences that were kept, by their sums, in the order of the causes. */
const SENTENCES: Readonly<Record<ComplaintId, string>> = {
  N1: '1d8d-ce06-e0eb-135e-68bb',
  N2: '717b-296e-3b82-4458',
  N3: '3f06-a0c1-91e3-e014-4cb3',
  N4: 'aa19-fb61-744e',
  N5: '4aa1-0777-69ce',
  N6: '19a9-e9f0',
  N7: '6ccd-744e-6327-6556',
  N8: '3a5e-0782-1d92',
  SH1: 'e517-6454-ebfb',
  SH2: '01e9-cd81-f278',
  SH3: '6454-a132-76ff',
  SH4: 'cd81-eda9-5078',
  SH5: '14a3-8937-6a4d',
  SH6: '2527-e795-744e',
  SH7: '75e0',
  SH8: 'c2c1-ffb8-5978',
  B1: '3e48-fb05-3e42-ad07',
  B2: '6ccd-3144-be41',
  B3: 'ca09-8cf5-2351',
  B4: 'c05d-8fcc',
  B5: 'b713-822f-8545',
  B6: '7420-20b0',
  B7: 'b440-cf05-0782-0a13',
  B8: 'c559-44a0-7585-68b6-17d5',
  B9: 'b655-f481-7f82',
  B10: '140e-6454',
  B11: '1c3b-79c2-3144',
  B12: '3144-aa49-f2d7',
  B13: '62b7-43de',
  B14: '25b7-c9fd-8def',
  B15: '8e46-e555-3144',
  A1: '1c30-fef9-f278-cd81',
  A2: 'e9d3-a6dc-4836',
  A3: '5968-44a0-f96a',
  A4: 'e24c-6454',
  A5: '5574-c9d3',
  K1: 'a4d3-35f3-db01-b149',
  K2: '7d3e-7222-38d8-f80a',
  K3: '987e-93a3-b149',
  K4: 'b133-56c0',
  K5: '6983-4f4a',
  K6: 'a7b0-5034',
  K7: 'a5b3',
  W1: '7695-c0a8-4948',
  W2: 'fe58-08ca',
  W3: '32dc-7cd9',
  W4: '604d',
  W5: '6df2-b149',
  W6: 'c35c-e64e-6a4d',
  W7: '5af8-6df2-6a4d',
  W8: '3144-d6c6',
  W9: 'd052-83c4',
  W10: 'd7dd',
  W11: 'd95e-ec6b-43b5',
  W12: '5db6-8ece',
  L1: '9c30-2713-f631',
  L2: 'ace9-41ba',
  L3: 'c17c',
  L4: 'f11d-8412-056a',
  L5: '247b-3c8f-a1c5-a863',
  L6: '270c-d6d0',
  L7: '65cb-b563',
  L8: '01fe-a2a3',
  L9: 'f11d-dd1f',
  D1: 'c614-29fc-afa8',
  D2: 'c9b0-2deb-f49c',
  D3: '90d4-e9d3-e10f',
  D4: '14e1-e9d3-5171',
  D5: '1e9b-7f7e-f00a',
  D6: 'e9d3-d94d',
  D7: '7e38',
  D8: 'bc94-61b3',
  X1: 'b744-cea2-d0f6',
  X2: 'de0e-7b40-93cc',
  X3: 'dc6f-a118-4a02',
  X4: '5528-292a-85be',
}
