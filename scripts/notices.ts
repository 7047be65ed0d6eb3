/**
 * Writes public/notices.txt: every package that the built page may hold code, faces or weights of,
 * with its licence as the package itself gives it. `-- --check` only compares.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { notices } from './notices/gather.ts'

const FILE = new URL('../public/notices.txt', import.meta.url)
const text = notices()
const same = existsSync(FILE) && readFileSync(FILE, 'utf8') === text
if (process.argv.includes('--check')) {
  if (!same) {
    console.error('public/notices.txt is not what the installed packages say: run npm run notices.')
    process.exit(1)
  }
} else writeFileSync(FILE, text)
console.log(`RESULT ${JSON.stringify({ bytes: text.length, same })}`)
