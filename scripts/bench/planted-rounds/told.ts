/** A case in lines to read: what was told, what was true, what the engine made of it. */
import type { Played } from './play.ts'

export function told({ of, before, rounds }: Played): string {
  const marks = [
    of.nothing ? 'nothing wrong' : of.kind.words,
    ...(of.misled ? ['misled'] : []),
    ...(of.unanswered ? ['first question open'] : []),
  ]
  return [
    `${of.kind.id} ${of.garment}, bust ${Math.round(of.body.bustGirth ?? NaN)}, seed ${of.seed}: ${marks.join(', ')}; ${before.toFixed(1)} mm`,
    ...rounds.flatMap((r, i) => [
      `  round ${i + 1}: ${r.told.join('; ') || 'nothing seen'}; true ${r.truth.join(', ') || 'none'}; first ${r.first ?? 'none'}, asked ${r.asked}${r.taped.length > 0 ? `, taped ${r.taped.join(', ')}` : ''}`,
      `    ${r.edits.join('; ') || 'no edit'}; left ${r.left.toFixed(1)} mm${r.elsewhere && r.elsewhere.worse > 3 ? `, ${r.elsewhere.name} worse by ${r.elsewhere.worse.toFixed(1)}` : ''}`,
      ...r.reasons.map((why) => `      ${why}`),
    ]),
  ].join('\n')
}
