/**
 * A packed table of a survey: one woman a line, the first line names the columns. The files lie
 * beside the repository and are never part of it; without them there is nothing to read.
 */
import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { gunzipSync } from 'node:zlib'

const FOLDER = '../shared/data/ansur/'

export interface Survey {
  readonly file: string
  readonly rows: readonly Row[]
}
/** Value of a column, in the units of the file; a column without a number is our own mistake. */
export type Row = (column: string) => number

export const surveyPath = (file: string): string => `${FOLDER}${file}`

/** undefined when the file is not there. */
export function readSurvey(file: string, separator: ',' | '\t'): Survey | undefined {
  const path = fileURLToPath(new URL(`../../../${FOLDER}${file}`, import.meta.url))
  if (!existsSync(path)) return undefined
  // Place names in the last columns hold letters of an older alphabet; the numbers are plain.
  const text = gunzipSync(readFileSync(path)).toString('latin1')
  const [head = '', ...lines] = text.split(/\r?\n/).filter((line) => line !== '')
  const place = new Map(head.split(separator).map((name, i) => [name, i]))
  return { file, rows: lines.map((line) => rowOf(line.split(separator), place)) }
}

function rowOf(cells: readonly string[], place: ReadonlyMap<string, number>): Row {
  return (column) => {
    const cell = cells[place.get(column) ?? -1]
    const value = cell === undefined || cell === '' ? NaN : Number(cell)
    if (!Number.isFinite(value)) throw new Error(`survey: ${column} is "${cell}"`)
    return value
  }
}
