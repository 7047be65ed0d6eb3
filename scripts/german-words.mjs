/**
 * For a command run with tsx: `tsx --import ./scripts/german-words.mjs COMMAND.ts` reads the German
 * sister of every words file, as the German build does.
 */
import { register } from 'node:module'

register('./german-words-hooks.mjs', import.meta.url)
