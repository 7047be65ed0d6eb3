/**
 * node scripts/in-german.mjs COMMAND.ts [ARGUMENTS]   runs a command with the German words files in
 * place of the English, as the German page is built.
 */
import { resolve } from 'node:path'
import { runnerImport } from 'vite'
import { wordsOf } from './words.mjs'

const [command] = process.argv.splice(2, 1)
if (command === undefined) throw new Error('Name a command: scripts/in-german.mjs COMMAND.ts')
await runnerImport(resolve(command), {
  configFile: false,
  logLevel: 'warn',
  plugins: [wordsOf('de')],
})
