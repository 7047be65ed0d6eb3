/**
 * Ways of saying each complaint, as a small grammar: [one|or another], {shared choice}. The
 * learner draws sentences from it by a seeded generator, beside the written phrases, so that a
 * combination nobody wrote down still leans the right way.
 */
import { seeded } from './learn.ts'
import { SHARED, WAYS } from './ways.words.ts'

/** One sentence drawn from a pattern. */
function drawn(pattern: string, chance: () => number): string {
  const pick = (choices: string): string => {
    const all = choices.split('|')
    return all[Math.floor(chance() * all.length)] ?? ''
  }
  let text = pattern
  for (let deep = 0; deep < 4 && /[[{]/.test(text); deep += 1)
    text = text
      .replace(/\{(\w+)\}/g, (_, name: string) => pick(SHARED[name] ?? name))
      .replace(/\[([^[\]{}]*)\]/g, (_, choices: string) => pick(choices))
  return text.replace(/\s+/g, ' ').trim()
}

export interface Said {
  readonly phrase: string
  readonly expect: readonly string[]
}
export function drawnWays(each: number): readonly Said[] {
  const chance = seeded(7)
  return Object.entries(WAYS).flatMap(([ids, patterns]) => {
    const found = new Set<string>()
    for (let i = 0; i < each * 3 && found.size < each; i += 1)
      found.add(drawn(patterns[i % patterns.length] ?? '', chance))
    return [...found].map((phrase) => ({ phrase, expect: ids.split(',') }))
  })
}
