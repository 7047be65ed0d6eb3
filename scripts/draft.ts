/**
 * Drafts from a file of numbers: npm run draft -- INPUT.json OUT_DIR
 * Writes an SVG for each piece, the tiled PDF, steps.txt and numbers.json. The last line of
 * stdout is RESULT and one JSON object. Exit 0 when it ran; 2 with one sentence on stderr when
 * the input or the folder cannot be used.
 */
import { draftCommand } from './draft/command.ts'

process.exitCode = await draftCommand(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
})
