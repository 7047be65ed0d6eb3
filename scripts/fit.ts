/**
 * The rules of fitting by command: what is changed for complaints with answers and pins.
 * npm run fit -- --case FILE.json    decide a case or a list of cases
 * npm run fit -- --phrases FILE.json judge the finder on phrases
 * npm run fit -- --schema            print the words and numbers a case may use
 * The last line of stdout is RESULT and one JSON object. Exit 0 when it ran; 2 with one sentence
 * on stderr when the input cannot be used.
 */
import { runCases } from './fit/case.ts'
import { judgePhrases } from './fit/phrases.ts'
import { printSchema } from './fit/schema.ts'
import { Unusable } from './fit/unusable.ts'

const HELP = `npm run fit -- --case FILE.json   decide one case or a list of cases
npm run fit -- --phrases FILE.json  judge the finder on [{ phrase, expect, also }]
npm run fit -- --schema           print the vocabulary and the shape of a case and of RESULT`

const COMMANDS: Readonly<Record<string, (args: readonly string[]) => void | Promise<void>>> = {
  '--case': runCases,
  '--phrases': judgePhrases,
  '--schema': printSchema,
  '--help': () => void process.stdout.write(`${HELP}\n`),
}

async function main([flag = '--help', ...args]: readonly string[]): Promise<void> {
  const command = COMMANDS[flag]
  if (!command) throw new Unusable(`${flag} is no flag. Use ${Object.keys(COMMANDS).join(', ')}.`)
  await command(args)
}

main(process.argv.slice(2)).catch((error: unknown) => {
  if (!(error instanceof Unusable)) throw error
  process.stderr.write(`${error.message}\n`)
  process.exitCode = 2
})
